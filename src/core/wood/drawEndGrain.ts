import { SeamgrainError } from '../errors.js';
import type { RgbImage } from '../image/rgbImage.js';
import { degFromRad } from '../units/degFromRad.js';
import { addPiece } from './addPiece.js';
import { createBoard } from './createBoard.js';
import { driftOnLattice } from './driftOnLattice.js';
import { encodeSrgb } from './encodeSrgb.js';
import type { EndGrainSpec } from './endGrainSpec.js';
import type { EndGrainTruth } from './endGrainTruth.js';
import { faceLattice } from './faceLattice.js';
import type { FacePlane } from './facePlane.js';
import { markEndGrain } from './markEndGrain.js';
import { meanDirectionRad } from './meanDirectionRad.js';
import { paintEndGrain } from './paintEndGrain.js';
import { ringLineAt } from './ringLineAt.js';
import { ringProfile } from './ringProfile.js';
import { woodPalette } from './woodPalette.js';

/**
 * Draws the end of a board, its wide face A along the picture's top edge, with its exact truth.
 *
 * The plane x = atMm of the same solid that the long faces are drawn from.
 *
 * @param options.pxPerMm scale, 2 to 60 px/mm; rings of 1 mm want 8 or more.
 * @throws SeamgrainError when the scale cannot be drawn.
 */
export function drawEndGrain(
  spec: EndGrainSpec,
  options: { readonly pxPerMm: number },
): { readonly image: RgbImage; readonly truth: EndGrainTruth } {
  const { pxPerMm } = options;
  const board = createBoard(spec.board);
  const { widthMm, thicknessMm } = board;
  const [width, height] = [Math.round(widthMm * pxPerMm), Math.round(thicknessMm * pxPerMm)];
  if (!(pxPerMm >= 2 && pxPerMm <= 60) || width < 2 || height < 2) {
    throw new SeamgrainError(
      'cannotDo',
      `Cannot draw an end of ${widthMm} x ${thicknessMm} mm at ${pxPerMm} px/mm.`,
      'Choose a scale of 2 to 60 px/mm.',
    );
  }
  const atMm = spec.atMm ?? 0;
  const plane: FacePlane = { originMm: [atMm, 0, 0], right: [0, 1, 0], down: [0, 0, 1] };
  const profile = ringProfile(board.field.rings, board.spec.setting, board.treeSeed ^ 0x9a0f);
  const lattice = faceLattice(board, plane, 0, 0, widthMm, thicknessMm, 0.5);
  const at = board.field.pithAt(atMm);
  const pith = { xMm: at.yMm, yMm: at.zMm };
  const canvas = {
    left: 0,
    top: 0,
    width,
    height,
    pxPerMm,
    tone: new Float32Array(width * height),
    pores: new Float32Array(width * height),
  };
  paintEndGrain(
    {
      board,
      profile,
      lattice,
      drift: driftOnLattice(board, plane, lattice),
      canvas,
      textureSeed: (spec.board.seed ^ 0xe4d9) + Math.round(atMm / 0.4),
    },
    pith,
  );
  markEndGrain(canvas, spec, pith);
  const light = new Float32Array(3 * width * height);
  const panel = { width, height, pxPerMm, light, covered: new Float32Array(width * height) };
  addPiece(panel, canvas, woodPalette(board), [
    [-9, -9],
    [widthMm + 9, -9],
    [widthMm + 9, thicknessMm + 9],
    [-9, thicknessMm + 9],
  ]);
  const angle = (x: number, y: number) => ringLineAt(board, plane, x, y).angleRad;
  return {
    image: encodeSrgb(light, width, height),
    truth: {
      widthMm,
      thicknessMm,
      pith,
      ringLineRad: angle,
      ringAngleDeg: (x, overMm = 0) =>
        Math.abs(degFromRad(meanDirectionRad(angle, x, thicknessMm / 2, overMm))),
      ringWidthMm: (x, y) => ringLineAt(board, plane, x, y).spacingMm,
    },
  };
}
