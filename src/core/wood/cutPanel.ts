import { SeamgrainError } from '../errors.js';
import type { LineMm } from '../results/scoreResult.js';
import type { BoardSpec } from './boardSpec.js';
import { composePlacement } from './composePlacement.js';
import type { CutSpec } from './cutSpec.js';
import type { FaceName } from './facePlane.js';
import type { ColourShift, PanelSpec, PieceSpec, Placement, SeamSpec } from './panelSpec.js';
import { placeOnFace } from './placeOnFace.js';

/** One board's face as it lies in the panel before it is cut. */
export interface CutPanelOptions {
  readonly board: BoardSpec;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Face point shown at the panel's upper left corner, default (0, 0). */
  readonly uMm?: number;
  readonly vMm?: number;
  readonly face?: FaceName;
  readonly cuts: readonly CutSpec[];
}

/** How the wood beyond the cut has moved: panel point of B to the point of A's frame it shows. */
function shiftAcross(kind: 'rip' | 'crosscut', line: LineMm, cut: CutSpec): Placement {
  const length = Math.hypot(line.x2Mm - line.x1Mm, line.y2Mm - line.y1Mm);
  const [tx, ty] = [(line.x2Mm - line.x1Mm) / length, (line.y2Mm - line.y1Mm) / length];
  // From A to B: a quarter turn from the line, to the other hand for a crosscut.
  const hand = kind === 'rip' ? 1 : -1;
  const [nx, ny] = [-ty * hand, tx * hand];
  const turn = (hand * (cut.wedgeMmPerM ?? 0)) / 1000;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [cx, cy] = [(line.x1Mm + line.x2Mm) / 2, (line.y1Mm + line.y2Mm) / 2];
  const [u, g] = [cut.slideMm ?? 0, cut.lostMm ?? 0];
  return {
    a: cos,
    b: -sin,
    c: cx - cos * cx + sin * cy + u * tx + g * nx,
    d: sin,
    e: cos,
    f: cy - sin * cx - cos * cy + u * ty + g * ny,
  };
}

/** The seam's line across the whole panel. */
function seamLine(kind: 'rip' | 'crosscut', cut: CutSpec, w: number, h: number): LineMm {
  const slope = Math.tan(cut.tiltRad ?? 0);
  return kind === 'rip'
    ? {
        x1Mm: 0,
        y1Mm: cut.atMm - (slope * w) / 2,
        x2Mm: w,
        y2Mm: cut.atMm + (slope * w) / 2,
      }
    : {
        x1Mm: cut.atMm + (slope * h) / 2,
        y1Mm: 0,
        x2Mm: cut.atMm - (slope * h) / 2,
        y2Mm: h,
      };
}

/** A line lengthened so that it leaves the panel at both ends. */
function lengthen({ x1Mm, y1Mm, x2Mm, y2Mm }: LineMm): [[number, number], [number, number]] {
  const share = 20 / Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  const [dx, dy] = [(x2Mm - x1Mm) * share, (y2Mm - y1Mm) * share];
  return [
    [x1Mm - dx, y1Mm - dy],
    [x2Mm + dx, y2Mm + dy],
  ];
}

/**
 * A board's face cut along straight lines and put together again, each cut with its own loss,
 * slide, wedge, depth step, colour and glue line. With nothing lost it is the uncut face.
 *
 * @param kind all rips (seams along x, top to bottom) or all crosscuts (along y, left to right).
 * @throws SeamgrainError when the cuts do not follow one another or leave the panel.
 */
export function cutPanel(kind: 'rip' | 'crosscut', options: CutPanelOptions): PanelSpec {
  const { widthMm, heightMm, cuts } = options;
  const end = kind === 'rip' ? heightMm : widthMm;
  const lines = cuts.map((cut) => seamLine(kind, cut, widthMm, heightMm));
  cuts.forEach((cut, i) => {
    if (cut.atMm > (cuts[i - 1]?.atMm ?? 0) && cut.atMm < end) return;
    throw new SeamgrainError(
      'cannotDo',
      `Cut ${i + 1} at ${cut.atMm} mm does not lie between its neighbours in the panel.`,
      `Give the cuts in rising order, between 0 and ${end} mm.`,
    );
  });
  const first: LineMm =
    kind === 'rip'
      ? { x1Mm: 0, y1Mm: -20, x2Mm: widthMm, y2Mm: -20 }
      : { x1Mm: -20, y1Mm: 0, x2Mm: -20, y2Mm: heightMm };
  const last: LineMm =
    kind === 'rip'
      ? { x1Mm: 0, y1Mm: heightMm + 20, x2Mm: widthMm, y2Mm: heightMm + 20 }
      : { x1Mm: widthMm + 20, y1Mm: 0, x2Mm: widthMm + 20, y2Mm: heightMm };
  const borders = [first, ...lines, last].map(lengthen);

  let placement = placeOnFace(0, 0, options.uMm ?? 0, options.vMm ?? 0);
  let depthMm = 0;
  let colourShift: ColourShift | undefined;
  const pieces = borders.slice(1).map((border, i): PieceSpec => {
    const cut = cuts[i - 1];
    if (cut !== undefined) {
      placement = composePlacement(placement, shiftAcross(kind, lines[i - 1]!, cut));
      depthMm += cut.depthStepMm ?? 0;
      colourShift = addShift(colourShift, cut.colourShift);
    }
    const [p, q] = borders[i]!;
    const [r, s] = border;
    return {
      name: `piece ${i + 1}`,
      board: 0,
      face: options.face ?? 'A',
      depthMm,
      outline: kind === 'rip' ? [p, q, s, r] : [p, r, s, q],
      placement,
      ...(colourShift === undefined ? {} : { colourShift }),
    };
  });
  const seams = cuts.map(
    (cut, i): SeamSpec => ({
      id: `${kind} ${i + 1}`,
      kind,
      line: lines[i]!,
      pieceA: i,
      pieceB: i + 1,
      lostMm: cut.lostMm ?? 0,
      slideMm: cut.slideMm ?? 0,
      wedgeRad: (cut.wedgeMmPerM ?? 0) / 1000,
      glueWidthMm: cut.glueWidthMm ?? 0,
      glueContrast: cut.glueContrast ?? 0.3,
      gapMm: 0,
    }),
  );
  return { widthMm, heightMm, boards: [options.board], pieces, seams };
}

function addShift(a: ColourShift | undefined, b: ColourShift | undefined): ColourShift | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return { dL: a.dL + b.dL, da: a.da + b.da, db: a.db + b.db };
}
