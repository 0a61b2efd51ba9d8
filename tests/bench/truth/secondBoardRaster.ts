import { createRandom } from '../../../src/core/random/createRandom.js';
import { ageFromLattice } from '../../../src/core/wood/ageFromLattice.js';
import type { BoardSpec } from '../../../src/core/wood/boardSpec.js';
import type { FaceLattice } from '../../../src/core/wood/faceLattice.js';
import { levelBelow, type SecondField } from './secondField.js';

/** Darkness of a board's face as a picture of its own, 0 pale to about 1 dark. */
export interface BoardRaster {
  readonly x0Mm: number;
  readonly y0Mm: number;
  readonly pxPerMm: number;
  readonly width: number;
  readonly height: number;
  readonly dark: Float32Array;
}

/** Draws the face between two corners; a fresh texture by recursive filtering of white noise. */
export function secondBoardRaster(
  board: BoardSpec,
  field: SecondField,
  box: { x0: number; y0: number; x1: number; y1: number },
  pxPerMm: number,
): BoardRaster {
  const width = Math.ceil((box.x1 - box.x0) * pxPerMm) + 2;
  const height = Math.ceil((box.y1 - box.y0) * pxPerMm) + 2;
  const dark = new Float32Array(width * height);
  drawLines(board, field, box, pxPerMm, width, height, dark);
  addFibre(board, field, box, pxPerMm, width, height, dark);
  addPits(board, field, box, pxPerMm, width, height, dark);
  return { x0Mm: box.x0, y0Mm: box.y0, pxPerMm, width, height, dark };
}

function drawLines(
  board: BoardSpec,
  field: SecondField,
  box: { x0: number; y0: number },
  pxPerMm: number,
  width: number,
  height: number,
  dark: Float32Array,
): void {
  const random = createRandom(board.seed ^ 0x11f3);
  const strong = Array.from(field.levels, () => random.uniform(0.4, 1.1));
  const power = random.uniform(2, 5);
  const size =
    { 'ring-porous': 0.34, 'diffuse-porous': 0.16, softwood: 0.5 }[board.setting] *
    (board.contrast ?? 1);
  const lattice = latticeOf(field, box, width / pxPerMm, height / pxPerMm);
  for (let row = 0; row < height; row++) {
    let index = 0;
    for (let column = 0; column < width; column++) {
      const x = box.x0 + (column + 0.5) / pxPerMm;
      const f = ageFromLattice(lattice, x, box.y0 + (row + 0.5) / pxPerMm);
      if (!(f >= field.levels[index]! && f < field.levels[index + 1]!)) {
        index = levelBelow(field.levels, f);
      }
      const w = field.levels[index + 1]! - field.levels[index]!;
      const t = f - field.levels[index]!;
      let line: number;
      if (board.setting === 'ring-porous') line = strong[index]! * Math.exp(-t / 0.4);
      else if (board.setting === 'diffuse-porous') {
        line = strong[index]! * Math.exp(-((Math.min(t, w - t) / 0.14) ** 2)) + 0.2 * (t / w);
      } else line = strong[index]! * (t / w) ** power;
      dark[row * width + column] = size * line;
    }
  }
}

/** The field on a 1 mm lattice: its humps are tens of mm, so cubic interpolation is exact enough. */
function latticeOf(
  field: SecondField,
  box: { x0: number; y0: number },
  widthMm: number,
  heightMm: number,
): FaceLattice {
  const i0 = Math.floor(box.x0) - 2;
  const j0 = Math.floor(box.y0) - 2;
  const columns = Math.ceil(widthMm) + 7;
  const rows = Math.ceil(heightMm) + 7;
  const ageMm = Float64Array.from(
    { length: columns * rows },
    (_, k) => field.at(i0 + (k % columns), j0 + Math.floor(k / columns)).f,
  );
  return { stepMm: 1, i0, j0, columns, rows, ageMm, slope: new Float32Array(0) };
}

function addFibre(
  board: BoardSpec,
  field: SecondField,
  box: { x0: number },
  pxPerMm: number,
  width: number,
  height: number,
  dark: Float32Array,
): void {
  const random = createRandom(board.seed ^ 0x7177);
  const lanes = height + 80;
  const texture = new Float32Array(lanes * width);
  for (const [lengthMm, size, lanesWide] of [
    [22, 0.03, 2.5],
    [4, 0.03, 0.6],
  ] as const) {
    const memory = Math.exp(-1 / (lengthMm * pxPerMm));
    const fresh = Math.sqrt(1 - memory * memory);
    const sideways = Math.exp(-1 / (lanesWide * pxPerMm * 0.15));
    const renew = Math.sqrt(1 - sideways * sideways);
    const previous = new Float32Array(width);
    for (let lane = 0; lane < lanes; lane++) {
      let value = random.normal();
      for (let column = 0; column < width; column++) {
        // Uniform noise of unit variance is near enough once filtered, and quicker.
        value = memory * value + fresh * (random.next() - 0.5) * 3.46;
        previous[column] = sideways * previous[column]! + renew * value;
        texture[lane * width + column]! += size * previous[column]!;
      }
    }
  }
  for (let column = 0; column < width; column++) {
    const x = box.x0 + column / pxPerMm;
    const drift = field.fibreSlope * (x - 200) + field.fibreBendMm * Math.sin(x / 130);
    const shift = 40 - Math.max(-38, Math.min(38, drift * pxPerMm));
    const whole = Math.floor(shift);
    const part = shift - whole;
    for (let row = 0; row < height; row++) {
      const at = (row + whole) * width + column;
      dark[row * width + column]! += (1 - part) * texture[at]! + part * texture[at + width]!;
    }
  }
}

function addPits(
  board: BoardSpec,
  field: SecondField,
  box: { x0: number; y0: number },
  pxPerMm: number,
  width: number,
  height: number,
  dark: Float32Array,
): void {
  const random = createRandom(board.seed ^ 0x9173);
  const perMm2 = { 'ring-porous': 1.1, 'diffuse-porous': 0.7, softwood: 0.05 }[board.setting];
  const depth = { 'ring-porous': 0.35, 'diffuse-porous': 0.06, softwood: 0.1 }[board.setting];
  const count = Math.round((perMm2 * width * height) / pxPerMm ** 2);
  for (let i = 0; i < count; i++) {
    const cx = random.uniform(0, width);
    const cy = random.uniform(0, height);
    const x = box.x0 + cx / pxPerMm;
    const y = box.y0 + cy / pxPerMm;
    if (board.setting === 'ring-porous') {
      const { f } = field.at(x, y);
      const t = f - field.levels[levelBelow(field.levels, f)]!;
      if (random.next() > Math.exp(-t / 0.35)) continue;
    }
    const half = random.uniform(0.4, 3) * pxPerMm;
    const sigma = random.uniform(0.05, 0.11) * pxPerMm;
    const slope = field.fibreSlope + (field.fibreBendMm / 130) * Math.cos(x / 130);
    const first = Math.max(0, Math.ceil(cx - half));
    const last = Math.min(width - 1, Math.floor(cx + half));
    for (let column = first; column <= last; column++) {
      const middle = cy + slope * (column - cx);
      const reach = Math.ceil(2.5 * sigma);
      for (let row = Math.floor(middle) - reach; row <= Math.floor(middle) + reach; row++) {
        if (row < 0 || row >= height) continue;
        const away = (row + 0.5 - middle) / sigma;
        dark[row * width + column]! += depth * Math.exp(-0.5 * away * away);
      }
    }
  }
}
