import { bandBelow } from '../board/endGrain/arcShare.js';
import { cupping } from '../board/endGrain/cupping.js';
import type { FittedRings } from '../board/endGrain/fitRings.js';
import type { HandPlaced } from '../board/endGrain/handPlaced.js';
import { pithFromRings } from '../board/endGrain/pithFromRings.js';
import { type EndReading, readEnd } from '../board/endGrain/readEnd.js';
import { angleToFaceDeg, ringDirection } from '../board/endGrain/ringDirection.js';
import { ringsByHand } from '../board/endGrain/ringsByHand.js';
import { ringWidths } from '../board/endGrain/ringWidths.js';
import { logLuminancePlane } from '../colour/logLuminancePlane.js';
import { SeamgrainError } from '../errors.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import { replicateBorder } from '../image/replicateBorder.js';
import type { Progress } from '../progress.js';
import type { EndgrainResult } from '../results/endgrainResult.js';
import { findSpecies } from '../shop/movement/findSpecies.js';
import { degFromRad } from '../units/degFromRad.js';
import { wrapHalfTurnRad } from '../units/wrapHalfTurnRad.js';
import { endgrainNotes } from './endgrainNotes.js';
import { sharesOfAngles } from './sharesOfAngles.js';

const stepMm = 5;
/** Stain changes more slowly than rings do, mm. */
const slowMm = 1.2;

/** What is known beside the photo. */
export interface EndgrainOptions {
  /** Marks of the maker's own; where any is given the photo is not searched for rings. */
  readonly placed?: HandPlaced;
  /** Species by name, for the hollow in mm. */
  readonly species?: string;
}

/**
 * Reads a board's end: where the pith lay, how the rings stand to the wide face (the photo's
 * horizontal), how wide they are, which share of the width is sawn which way, how it cups.
 *
 * Saw marks are taken out first (`readEnd`); rings are circles about one pith plus what
 * the wood strays from them (`readRings`), and the ring angle is that of the strayed ring, not of
 * the circle. Classes by the Architectural Woodwork Standards, 1st ed. 2009, App. B: up to 30 deg
 * plain (flatsawn), 30 to 60 rift, 60 to 90 quartered.
 *
 * @throws SeamgrainError wrongUsage for marks that give no direction, or an unknown species.
 */
export function endgrainPanel(
  photo: PanelPhoto,
  { placed, species }: EndgrainOptions = {},
  progress?: Progress,
): EndgrainResult {
  const coefficients = species === undefined ? null : findSpecies(species).coefficient;
  progress?.(0.1, 'looking for saw marks and rings');
  const raw = replicateBorder(logLuminancePlane(photo.image), Math.ceil(photo.pxPerMm));
  const { widthMm, heightMm, pxPerMm } = photo;
  const { plane, rings, sawMarks }: EndReading = placed
    ? { plane: raw, rings: ringsByHand(placed, widthMm, heightMm), sawMarks: 'none' }
    : readEnd(raw, pxPerMm);
  progress?.(0.8, 'measuring the rings');
  if (placed && !rings) throw noDirection();
  const panel = { widthMm, heightMm, pxPerMm };
  const common = {
    schema: 'seamgrain/endgrain@1',
    panel,
    found: placed ? 'placed' : 'photo',
    sawMarks: sawMarks === 'taken out',
  } as const;
  if (!rings) {
    return {
      ...common,
      pith: null,
      pithAtLeastMm: null,
      ringAngle: [],
      ringWidthMm: { median: null, p10: null, p90: null },
      cut: null,
      cupping: null,
      notes: endgrainNotes(photo.notes, { kind: 'unread', sawMarks }),
    };
  }
  const pith = pithFromRings(rings);
  const fine = anglesAlong(rings, widthMm, heightMm / 2, Math.max(3, Math.round(widthMm)));
  const widths = ringWidths(bandBelow(plane, slowMm * pxPerMm), pxPerMm, rings);
  const onFace = (yMm: number) =>
    anglesAlong(rings, widthMm, yMm, Math.max(3, Math.round(widthMm / 2))).map((a) => a.angleDeg);
  progress?.(1, 'done');
  return {
    ...common,
    pith: pith.kind === 'told' ? { xMm: pith.xMm, yMm: pith.yMm, seMm: pith.seMm } : null,
    pithAtLeastMm: pith.kind === 'far' ? pith.atLeastMm : null,
    ringAngle: anglesAlong(rings, widthMm, heightMm / 2, Math.max(3, Math.round(widthMm / stepMm))),
    ringWidthMm: widths,
    cut: sharesOfAngles(fine.map((ring) => ring.angleDeg)),
    cupping: cupping(onFace(0), onFace(heightMm), { widthMm, thicknessMm: heightMm }, coefficients),
    notes: endgrainNotes(photo.notes, {
      kind: 'read',
      sawMarks,
      pith,
      placed: placed ?? null,
      withSpecies: coefficients !== null,
    }),
  };
}

function anglesAlong(rings: FittedRings, widthMm: number, yMm: number, count: number) {
  return Array.from({ length: count }, (_, k) => {
    const xMm = ((k + 0.5) * widthMm) / count;
    const { acrossRad, seRad } = ringDirection(rings, xMm, yMm);
    return {
      xMm,
      angleDeg: angleToFaceDeg(acrossRad),
      seDeg: degFromRad(seRad),
      leanDeg: degFromRad(wrapHalfTurnRad(acrossRad + Math.PI / 2)),
    };
  });
}

function noDirection(): SeamgrainError {
  return new SeamgrainError(
    'wrongUsage',
    'The marks on the end give no ring direction.',
    'Lay a tangent along a ring, its two ends at least a millimetre apart; several must not all lie on one line to the pith.',
  );
}
