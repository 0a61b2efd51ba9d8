import { faceRingsPanel } from '../../src/core/pipeline/faceRingsPanel.js';
import { createBoard } from '../../src/core/wood/createBoard.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import { wideFace } from '../../src/core/wood/facePlane.js';
import { mixedBoardsPanel } from '../../src/core/wood/mixedBoardsPanel.js';
import type { WoodCut, WoodSetting } from '../../src/core/wood/woodSetting.js';

/** One strip of a drawn face: ring angle as estimated, its stated error, and the model's. */
export interface FaceStrip {
  readonly angleDeg: number | null;
  readonly seDeg: number;
  readonly trueDeg: number;
}

const pxPerMm = 6;
const lengthMm = 300;

/** A face of 120 to 180 mm drawn, read and held against the model's rings. */
export function faceStrips(seed: number, setting: WoodSetting, cut: WoodCut): FaceStrip[] {
  const widthMm = 120 + 10 * (seed % 7);
  const spec = { seed, setting, cut, lengthMm, widthMm };
  const panel = mixedBoardsPanel({
    widthMm: lengthMm,
    boards: [{ board: spec, heightMm: widthMm }],
  });
  const { image } = drawPanel(panel, { pxPerMm });
  const photo = { image, pxPerMm, widthMm: lengthMm, heightMm: widthMm, notes: [] };
  const found = faceRingsPanel(photo);
  const board = createBoard(spec);
  const plane = wideFace(board, 'A');
  const slope = { ageMm: 0, dx: 0, dy: 0, dz: 0 };
  return found.ringAngle.map(({ yMm, angleDeg, seDeg }) => {
    // The ring stands to the face as its slope across the thickness does to that across the width.
    let sum = 0;
    const places = 60;
    for (let k = 0; k < places; k++) {
      const [x, y] = [((k + 0.5) * lengthMm) / places, yMm + 10 * ((k % 6) / 6 - 0.42)];
      board.field.sample(x, y, plane.originMm[2], slope);
      sum += (Math.atan2(Math.abs(slope.dy), Math.abs(slope.dz)) * 180) / Math.PI;
    }
    return { angleDeg, seDeg, trueDeg: sum / places };
  });
}

/** The faces' table: one row a wood and cut. */
export function faceTable(seeds: readonly number[], say: (what: string) => void): string {
  const rows: string[] = [];
  for (const setting of ['ring-porous', 'diffuse-porous', 'softwood'] as const) {
    for (const cut of ['flatsawn', 'rift', 'quartered'] as const) {
      say(`faces ${setting} ${cut}`);
      const strips = seeds.flatMap((seed) => faceStrips(seed, setting, cut));
      const told = strips.filter((strip) => strip.angleDeg !== null);
      const off = told.map((strip) => strip.angleDeg! - strip.trueDeg);
      const within = told.filter((s) => Math.abs(s.angleDeg! - s.trueDeg) < 2 * s.seDeg).length;
      const rms = Math.sqrt(off.reduce((sum, v) => sum + v * v, 0) / Math.max(1, off.length));
      const share = (part: number, all: number) =>
        all === 0 ? '-' : `${Math.round((100 * part) / all)} %`;
      rows.push(
        `| ${setting} | ${cut} | ${share(told.length, strips.length)} | ${told.length ? rms.toFixed(1) : '-'} | ${share(within, told.length)} |`,
      );
    }
  }
  return [
    '| wood | cut | strips told | RMSE where told, deg | within 2 of its errors |',
    '|---|---|---|---|---|',
    ...rows,
  ].join('\n');
}
