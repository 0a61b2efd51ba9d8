import { wrapHalfTurnRad } from '../units/wrapHalfTurnRad.js';
import type { Board } from './board.js';
import { wideFace } from './facePlane.js';
import { fibreSlopeAt } from './fibreSlopeAt.js';
import { meanBoardColour } from './meanBoardColour.js';
import { meanDirectionRad } from './meanDirectionRad.js';
import type { PanelSpec } from './panelSpec.js';
import type { PanelTruth, SeamTruth } from './panelTruth.js';
import { pieceFinder } from './pieceFinder.js';
import { ringLineAt } from './ringLineAt.js';
import type { RingProfile } from './ringProfile.js';
import { ringIndexAt } from './ringTable.js';

/** The truth of a panel from its own description; nothing is measured from the picture. */
export function createPanelTruth(
  spec: PanelSpec,
  boards: readonly Board[],
  profiles: readonly RingProfile[],
): PanelTruth {
  const { pieces } = spec;
  const pieceAt = pieceFinder(spec);
  const ringLineOfPiece = (index: number, x: number, y: number) => {
    const piece = pieces[index]!;
    const board = boards[piece.board]!;
    const { a, b, c, d, e, f } = piece.placement;
    const plane = wideFace(board, piece.face ?? 'A', piece.depthMm ?? 0);
    const line = ringLineAt(board, plane, a * x + b * y + c, d * x + e * y + f);
    // Slopes along panel x and y; lengths are kept by the placement.
    const dx = line.du * a + line.dv * d;
    const dy = line.du * b + line.dv * e;
    const { innerMm } = board.field.rings;
    const ring = ringIndexAt(board.field.rings, line.ageMm);
    const widthMm = innerMm[ring + 1]! - innerMm[ring]!;
    return {
      angleRad: wrapHalfTurnRad(Math.atan2(dx, -dy)),
      spacingMm: widthMm / Math.hypot(dx, dy),
      ageMm: line.ageMm,
      ring: ring + (line.ageMm - innerMm[ring]!) / widthMm,
    };
  };
  const fibreAngleRad = (x: number, y: number) => {
    const index = pieceAt(x, y);
    if (index < 0) return Number.NaN;
    const { placement: p, board, face, depthMm } = pieces[index]!;
    const plane = wideFace(boards[board]!, face ?? 'A', depthMm ?? 0);
    const [u, v] = [p.a * x + p.b * y + p.c, p.d * x + p.e * y + p.f];
    const [du, dv] = [1, fibreSlopeAt(boards[board]!, plane, u, v)];
    return wrapHalfTurnRad(Math.atan2(p.b * du + p.e * dv, p.a * du + p.d * dv));
  };
  const colourOf = (index: number) => {
    const piece = pieces[index]!;
    return meanBoardColour(boards[piece.board]!, profiles[piece.board]!, piece.colourShift);
  };
  const seams = spec.seams.map((seam): SeamTruth => {
    const [a, b] = [pieces[seam.pieceA]!, pieces[seam.pieceB]!];
    const [from, to] = [colourOf(seam.pieceA), colourOf(seam.pieceB)];
    return {
      ...seam,
      sameBoard: a.board === b.board && (a.face ?? 'A') === (b.face ?? 'A'),
      depthStepMm: (b.depthMm ?? 0) - (a.depthMm ?? 0),
      colourStep: { dL: to[0] - from[0], da: to[1] - from[1], db: to[2] - from[2] },
    };
  });
  const at = (x: number, y: number, key: 'angleRad' | 'spacingMm') => {
    const index = pieceAt(x, y);
    return index < 0 ? Number.NaN : ringLineOfPiece(index, x, y)[key];
  };
  return {
    widthMm: spec.widthMm,
    heightMm: spec.heightMm,
    seams,
    grainAngleRad: (x, y) => at(x, y, 'angleRad'),
    meanGrainAngleRad(x, y, overMm) {
      const index = pieceAt(x, y);
      const inPiece = (px: number, py: number) =>
        pieceAt(px, py) === index ? ringLineOfPiece(index, px, py).angleRad : Number.NaN;
      return index < 0 ? Number.NaN : meanDirectionRad(inPiece, x, y, overMm);
    },
    ringSpacingMm: (x, y) => at(x, y, 'spacingMm'),
    fibreAngleRad,
    pieceAt,
    ringLineOfPiece,
  };
}
