import type { BoardSpec } from './boardSpec.js';
import type { ColourShift, PanelSpec, PieceSpec, SeamSpec } from './panelSpec.js';
import { placeOnFace } from './placeOnFace.js';

/** A drawer front cut out of the panel it sits in. */
export interface DrawerFrontOptions {
  readonly board: BoardSpec;
  /** The panel before it is cut, and the face point at its upper left corner (default 0, 0). */
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly uMm?: number;
  readonly vMm?: number;
  /** The front as it lies on the uncut panel, before trimming. */
  readonly front: {
    readonly xMm: number;
    readonly yMm: number;
    readonly widthMm: number;
    readonly heightMm: number;
  };
  /** Kerf of all four cuts, default 3.175 mm (1/8 in). */
  readonly kerfMm?: number;
  /** Dressing per ripped edge, default 0 mm. */
  readonly dressMm?: number;
  /** End pieces stay at their stations, or slide in by a kerf to close the ends. Default stay. */
  readonly ends?: 'stay' | 'slideIn';
  /** Trimmed from each edge of the front, default 0 mm (front tight in its opening). */
  readonly revealMm?: number;
  readonly glueWidthMm?: number;
  readonly glueContrast?: number;
  /** The front alone planed deeper, or of another colour (another finish, more light). */
  readonly frontDepthMm?: number;
  readonly frontColourShift?: ColourShift;
}

/**
 * The panel put together again: upper rail, left end, front, right end, lower rail.
 *
 * Both rips lose kerf + 2 x dressing. Ends that stay leave the opening two kerfs longer than the
 * front; ends that slide in carry their grain a kerf along both rails, and the rails are trimmed
 * by a kerf at each end of the panel (method section 6).
 */
export function drawerFrontPanel(options: DrawerFrontOptions): PanelSpec {
  const { front, kerfMm = 3.175, dressMm = 0, ends = 'stay', revealMm = 0 } = options;
  const lossMm = kerfMm + 2 * dressMm;
  const closedMm = ends === 'slideIn' ? kerfMm : 0;
  const widthMm = options.lengthMm - 2 * closedMm;
  const heightMm = options.widthMm - 2 * lossMm;
  const u = (options.uMm ?? 0) + closedMm;
  const v = options.vMm ?? 0;
  const y1 = front.yMm - lossMm;
  const y2 = y1 + front.heightMm;
  const left = front.xMm - closedMm;
  const right = left + front.widthMm;
  const endGapMm = kerfMm - closedMm + revealMm;
  // Gaps are centred where they open: between the end piece and the trimmed front.
  const xl = left + revealMm - endGapMm / 2;
  const xr = right - revealMm + endGapMm / 2;
  const box = (x0: number, y0: number, x1: number, y1Mm: number): PieceSpec['outline'] => [
    [x0, y0],
    [x1, y0],
    [x1, y1Mm],
    [x0, y1Mm],
  ];
  const farX = widthMm + 20;
  const strip = v + lossMm;
  const piece = (name: string, outline: PieceSpec['outline'], slide: number, down: number) => ({
    name,
    board: 0,
    outline,
    placement: placeOnFace(0, 0, u - slide, down),
  });
  const pieces: PieceSpec[] = [
    piece('upper rail', box(-20, -20, farX, y1), 0, v),
    piece('left end', box(-20, y1, xl, y2), closedMm, strip),
    {
      ...piece('front', box(xl, y1, xr, y2), 0, strip),
      depthMm: options.frontDepthMm ?? 0,
      ...(options.frontColourShift === undefined ? {} : { colourShift: options.frontColourShift }),
    },
    piece('right end', box(xr, y1, farX, y2), -closedMm, strip),
    piece('lower rail', box(-20, y2, farX, heightMm + 20), 0, v + 2 * lossMm),
  ];
  const rip = (
    id: string,
    y: number,
    x0: number,
    x1: number,
    a: number,
    b: number,
    gap: number,
    slide: number,
  ) => seam(options, id, 'rip', { x1Mm: x0, y1Mm: y, x2Mm: x1, y2Mm: y }, a, b, lossMm, slide, gap);
  const cross = (id: string, x: number, a: number, b: number) =>
    seam(
      options,
      id,
      'crosscut',
      { x1Mm: x, y1Mm: y1, x2Mm: x, y2Mm: y2 },
      a,
      b,
      closedMm,
      0,
      endGapMm,
    );
  const inset = revealMm / 2;
  return {
    widthMm,
    heightMm,
    boards: [options.board],
    pieces,
    seams: [
      rip('upper left', y1, 0, xl, 0, 1, 0, -closedMm),
      rip('upper front', y1 + inset, xl, xr, 0, 2, revealMm, 0),
      rip('upper right', y1, xr, widthMm, 0, 3, 0, closedMm),
      rip('lower left', y2, 0, xl, 1, 4, 0, closedMm),
      rip('lower front', y2 - inset, xl, xr, 2, 4, revealMm, 0),
      rip('lower right', y2, xr, widthMm, 3, 4, 0, -closedMm),
      cross('left end', xl, 1, 2),
      cross('right end', xr, 2, 3),
    ],
  };
}

function seam(
  options: DrawerFrontOptions,
  id: string,
  kind: SeamSpec['kind'],
  line: SeamSpec['line'],
  pieceA: number,
  pieceB: number,
  lostMm: number,
  slideMm: number,
  gapMm: number,
): SeamSpec {
  return {
    id,
    kind,
    line,
    pieceA,
    pieceB,
    lostMm,
    slideMm,
    wedgeRad: 0,
    glueWidthMm: options.glueWidthMm ?? 0,
    glueContrast: options.glueContrast ?? 0.3,
    gapMm,
  };
}
