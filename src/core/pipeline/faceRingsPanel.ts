import { bandBelow } from '../board/endGrain/arcShare.js';
import { type FaceAngle, faceRingAngle } from '../board/faceRings/faceRingAngle.js';
import { lineSlopes } from '../board/faceRings/lineSlopes.js';
import { ringCounts } from '../board/faceRings/ringCounts.js';
import { logLuminancePlane } from '../colour/logLuminancePlane.js';
import { type GrainField, grainField } from '../grain/grainField.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { FaceRings } from '../results/faceRings.js';

/** Slower changes across the lines are colour, not rings, mm. */
const slowMm = 1.2;
const stripMm = 10;

/**
 * Ring angle to the face where only the face was photographed: rings counted across the width
 * against the spacing law of circles about one pith (`faceRingAngle`). One board, its length from
 * left to right.
 */
export function faceRingsPanel(photo: PanelPhoto): FaceRings {
  return faceRingsOf(grainField(logLuminancePlane(photo.image), photo.pxPerMm), photo.heightMm);
}

/** The same from a grain field already read. @param heightMm the face's width, top to bottom. */
export function faceRingsOf(field: GrainField, heightMm: number): FaceRings {
  const { lines, linesPxPerMm } = field;
  const counts = ringCounts(bandBelow(lines, slowMm * linesPxPerMm), linesPxPerMm, stripMm);
  const found = faceRingAngle(counts, lineSlopes(field, counts.yMm, stripMm), heightMm);
  if (!found) {
    return {
      ringAngle: [],
      overPith: null,
      notes: ['Cannot tell how the rings stand: too few ring lines on this face.'],
    };
  }
  const untold = found.ringAngle.filter((strip) => strip.angleDeg === null).length;
  return {
    ringAngle: found.ringAngle,
    overPith: found.pith,
    notes: notesOf(untold, found.ringAngle),
  };
}

function notesOf(untold: number, strips: readonly FaceAngle[]): string[] {
  const basis =
    'Ring angle estimated from how the ring lines draw apart and close up across the face; a photo of the end tells it far better.';
  if (untold === 0) return [basis];
  if (untold === strips.length) {
    return [
      'Cannot tell the ring angle: no cathedral shows where the pith lay, and even lines may be wide rings on edge or narrow rings aslant. Photograph the end.',
    ];
  }
  return [basis, `Cannot tell the ring angle in ${untold} of ${strips.length} strips.`];
}
