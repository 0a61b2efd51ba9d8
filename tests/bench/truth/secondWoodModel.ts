import { linearLight } from '../../../src/core/colour/linearLight.js';
import type { RgbImage } from '../../../src/core/image/rgbImage.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { wrapHalfTurnRad } from '../../../src/core/units/wrapHalfTurnRad.js';
import type { BoardSpec } from '../../../src/core/wood/boardSpec.js';
import { drawSeamLines } from '../../../src/core/wood/drawSeamLines.js';
import { encodeSrgb } from '../../../src/core/wood/encodeSrgb.js';
import { meanDirectionRad } from '../../../src/core/wood/meanDirectionRad.js';
import type { PanelSpec, PieceSpec } from '../../../src/core/wood/panelSpec.js';
import type { PanelTruth } from '../../../src/core/wood/panelTruth.js';
import { pieceFinder } from '../../../src/core/wood/pieceFinder.js';
import { type BoardRaster, secondBoardRaster } from './secondBoardRaster.js';
import { levelBelow, type SecondField, secondField } from './secondField.js';

/** Planing deeper moves the flat field by this much per mm: it has no true depth. */
const perDepthMm = 0.5;

const colours = {
  'ring-porous': [
    [196, 158, 112],
    [182, 140, 98],
  ],
  'diffuse-porous': [
    [212, 184, 150],
    [158, 108, 78],
  ],
  softwood: [
    [224, 192, 150],
    [204, 156, 104],
  ],
} as const;

/**
 * The second, deliberately different wood model: draws any PanelSpec (same pieces, seams and
 * signs as the core's drawPanel) from flat random fields and raster textures instead of a solid.
 * For the bench only; nothing may be tuned on it.
 *
 * Read from each BoardSpec: seed, setting, cut, widthMm, ringWidthMm, contrast. Ignored: faces,
 * knots, pith placement and the rest of the solid.
 */
export function drawSecondPanel(
  spec: PanelSpec,
  options: { readonly pxPerMm: number },
): { readonly image: RgbImage; readonly truth: PanelTruth } {
  const { pxPerMm } = options;
  const width = Math.round(spec.widthMm * pxPerMm);
  const height = Math.round(spec.heightMm * pxPerMm);
  const flat = spec.boards.map(secondField);
  const fields = spec.pieces.map(({ board, depthMm = 0 }) => planed(flat[board]!, depthMm));
  const drawn = new Map<string, BoardRaster>();
  const rasters = spec.pieces.map(({ board, depthMm = 0 }, i) => {
    const key = `${board} ${depthMm}`;
    const raster = drawn.get(key) ?? rasterOf(spec, i, fields[i]!, pxPerMm);
    drawn.set(key, raster);
    return raster;
  });
  const light = new Float32Array(3 * width * height);
  const truth = truthOf(spec, fields);
  const pieceOfPixel = Int16Array.from({ length: width * height }, (_, k) =>
    truth.pieceAt(((k % width) + 0.5) / pxPerMm, (Math.floor(k / width) + 0.5) / pxPerMm),
  );
  const tints = spec.pieces.map((piece) => tintOf(spec.boards[piece.board]!, piece));
  // Four samples a pixel; a sample belongs to the piece whose outline holds it.
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = 3 * (y * width + x);
      const own = pieceOfPixel[y * width + x]!;
      const inner =
        x > 0 &&
        y > 0 &&
        x < width - 1 &&
        y < height - 1 &&
        pieceOfPixel[(y - 1) * width + x - 1] === own &&
        pieceOfPixel[(y - 1) * width + x + 1] === own &&
        pieceOfPixel[(y + 1) * width + x - 1] === own &&
        pieceOfPixel[(y + 1) * width + x + 1] === own;
      for (let k = 0; k < 4; k++) {
        const px = (x + 0.25 + 0.5 * (k & 1)) / pxPerMm;
        const py = (y + 0.25 + 0.5 * (k >> 1)) / pxPerMm;
        const index = inner ? own : truth.pieceAt(px, py);
        if (index < 0) continue;
        const piece = spec.pieces[index]!;
        const { a, b, c, d, e, f } = piece.placement;
        const raster = rasters[index]!;
        const dark = read(raster, a * px + b * py + c, d * px + e * py + f);
        const tint = tints[index]!;
        light[at]! += 0.25 * tint[0] * Math.max(0.03, 1 - 0.8 * dark);
        light[at + 1]! += 0.25 * tint[1] * Math.max(0.03, 1 - dark);
        light[at + 2]! += 0.25 * tint[2] * Math.max(0.03, 1 - 1.15 * dark);
      }
    }
  }
  const covered = new Float32Array(0);
  drawSeamLines({ width, height, pxPerMm, light, covered }, spec.seams);
  return { image: encodeSrgb(light, width, height), truth };
}

/** The field as it lies after planing `depthMm` deeper. */
function planed(field: SecondField, depthMm: number): SecondField {
  return {
    ...field,
    at(x, y) {
      const { f, fx, fy } = field.at(x, y);
      return { f: f + perDepthMm * depthMm, fx, fy };
    },
  };
}

function tintOf(board: BoardSpec, piece: PieceSpec): [number, number, number] {
  const random = createRandom(board.seed ^ 0xc01);
  const base = colours[board.setting][random.integer(2)]!;
  const lift = random.normal(0, 6);
  const shift = piece.colourShift;
  // A rough colour shift in sRGB levels; the truth's colour step is only the asked one.
  return base.map((level, channel) =>
    linearLight(level + lift + (shift ? 2.4 * shift.dL + (channel === 2 ? -2 : 1) * shift.db : 0)),
  ) as [number, number, number];
}

function rasterOf(
  spec: PanelSpec,
  index: number,
  field: SecondField,
  pxPerMm: number,
): BoardRaster {
  const box = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
  const { board, depthMm = 0 } = spec.pieces[index]!;
  for (const { board: own, depthMm: depth = 0, placement: p, outline } of spec.pieces) {
    if (own !== board || depth !== depthMm) continue;
    for (const [px, py] of outline) {
      const x = Math.min(spec.widthMm, Math.max(0, px));
      const y = Math.min(spec.heightMm, Math.max(0, py));
      const u = p.a * x + p.b * y + p.c;
      const v = p.d * x + p.e * y + p.f;
      box.x0 = Math.min(box.x0, u - 2);
      box.x1 = Math.max(box.x1, u + 2);
      box.y0 = Math.min(box.y0, v - 2);
      box.y1 = Math.max(box.y1, v + 2);
    }
  }
  return secondBoardRaster(spec.boards[board]!, field, box, 1.5 * pxPerMm);
}

function read(raster: BoardRaster, u: number, v: number): number {
  const x = (u - raster.x0Mm) * raster.pxPerMm - 0.5;
  const y = (v - raster.y0Mm) * raster.pxPerMm - 0.5;
  const i = Math.min(raster.width - 2, Math.max(0, Math.floor(x)));
  const j = Math.min(raster.height - 2, Math.max(0, Math.floor(y)));
  const [s, t] = [x - i, y - j];
  const k = j * raster.width + i;
  const { dark } = raster;
  const upper = dark[k]! + (dark[k + 1]! - dark[k]!) * s;
  const lower =
    dark[k + raster.width]! + (dark[k + raster.width + 1]! - dark[k + raster.width]!) * s;
  return upper + (lower - upper) * t;
}

function truthOf(spec: PanelSpec, fields: readonly SecondField[]): PanelTruth {
  const { pieces } = spec;
  const pieceAt = pieceFinder(spec);
  const ringLineOfPiece = (index: number, x: number, y: number) => {
    const { placement: p } = pieces[index]!;
    const field = fields[index]!;
    const point = field.at(p.a * x + p.b * y + p.c, p.d * x + p.e * y + p.f);
    const dx = point.fx * p.a + point.fy * p.d;
    const dy = point.fx * p.b + point.fy * p.e;
    const ageMm = point.f;
    const level = levelBelow(field.levels, ageMm);
    const widthMm = field.levels[level + 1]! - field.levels[level]!;
    return {
      angleRad: wrapHalfTurnRad(Math.atan2(dx, -dy)),
      spacingMm: widthMm / Math.hypot(dx, dy),
      ageMm,
      ring: level + (ageMm - field.levels[level]!) / widthMm,
    };
  };
  const angle = (x: number, y: number) => {
    const index = pieceAt(x, y);
    return index < 0 ? Number.NaN : ringLineOfPiece(index, x, y).angleRad;
  };
  return {
    widthMm: spec.widthMm,
    heightMm: spec.heightMm,
    seams: spec.seams.map((seam) => {
      const [a, b] = [pieces[seam.pieceA]!, pieces[seam.pieceB]!];
      const none = { dL: 0, da: 0, db: 0 };
      const [from, to] = [a.colourShift ?? none, b.colourShift ?? none];
      return {
        ...seam,
        sameBoard: a.board === b.board,
        depthStepMm: (b.depthMm ?? 0) - (a.depthMm ?? 0),
        colourStep: { dL: to.dL - from.dL, da: to.da - from.da, db: to.db - from.db },
      };
    }),
    grainAngleRad: angle,
    meanGrainAngleRad: (x, y, overMm) => meanDirectionRad(angle, x, y, overMm),
    ringSpacingMm(x, y) {
      const index = pieceAt(x, y);
      return index < 0 ? Number.NaN : ringLineOfPiece(index, x, y).spacingMm;
    },
    fibreAngleRad(x, y) {
      const index = pieceAt(x, y);
      if (index < 0) return Number.NaN;
      const { placement: p } = pieces[index]!;
      const { fibreSlope, fibreBendMm } = fields[index]!;
      const u = p.a * x + p.b * y + p.c;
      const slope = fibreSlope + (fibreBendMm / 130) * Math.cos(u / 130);
      return wrapHalfTurnRad(Math.atan2(p.b + p.e * slope, p.a + p.d * slope));
    },
    pieceAt,
    ringLineOfPiece,
  };
}
