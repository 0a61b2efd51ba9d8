import { binMaxima } from '../../src/core/seam/find/binMaxima.js';
import { lineScan } from '../../src/core/seam/find/lineScan.js';
import { usualTiltRad } from '../../src/core/seam/find/strongestLine.js';
import { seamlessSpecs } from './accuracyDrawn.js';
import { finderMaps } from './accuracyNull.js';
import { drawBench } from './accuracyPanels.js';

// `npm run bench:discord-law`: the two laws of `discordSurprise`, read off 27 drawn boards with no joint
// (tuning seeds): what one line in twenty reaches, and the mean excess beyond it (the most likely
// exponential tail). One line stands for 3 mm of the board, the best of five tilts.

const [binMm, edgeMm] = [3, 8];
const cues = ['strangers', 'stepped'] as const;
const reached: Record<(typeof cues)[number], number[]> = { strangers: [], stepped: [] };

for (const { spec } of seamlessSpecs(400, 3)) {
  const maps = finderMaps(drawBench(spec).photo);
  const region = { col0: 0, col1: maps.columns, row0: 0, row1: maps.rows };
  const slopes = [-2, -1, 0, 1, 2].map(
    (k) => Math.tan((k * usualTiltRad) / 2) * maps.columnMm * maps.rowsPerMm,
  );
  const edge = Math.round(edgeMm * maps.rowsPerMm);
  const scan = lineScan(maps, region, slopes, edge);
  for (const cue of cues) {
    const sums = scan.sum[maps.cues.findIndex((map) => map.cue === cue)];
    const lines = binMaxima(sums, scan.rows, Math.round(binMm * maps.rowsPerMm), edge);
    reached[cue].push(...lines.map(({ value }) => value));
  }
}

for (const cue of cues) {
  const values = reached[cue].sort((a, b) => a - b);
  const at5 = values[Math.floor(0.95 * values.length)];
  const beyond = values.filter((value) => value > at5);
  const tail = beyond.reduce((sum, value) => sum + value - at5, 0) / beyond.length;
  console.log(`${cue}: ${values.length} lines, at5 ${at5.toFixed(2)}, tail ${tail.toFixed(2)}`);
}
