import type { Scaling, ScalingRow } from './speedScaling.js';

/** The scaling tables of docs/speed.md. */
export function scalingLines({ startMs, pxPerMm, byArea, byMegapixels }: Scaling): string[] {
  const work = (row: ScalingRow) => row.wallMs - startMs - row.decodeMs;
  const table = (rows: readonly ScalingRow[]) => [
    '| panel, m2 | MP | `score`, ms | decoding, ms | less start and decoding, ms |',
    '|---|---|---|---|---|',
    ...rows.map((row) => {
      const cells = [row.areaM2.toFixed(2), row.megapixels.toFixed(1)];
      const times = [row.wallMs, row.decodeMs, work(row)].map((ms) => ms.toFixed(0));
      return `| ${[...cells, ...times].join(' | ')} |`;
    }),
    '',
  ];
  const power = exponent(byArea.map((row) => [row.areaM2, work(row)]));
  const [first] = byMegapixels;
  const growth = Math.max(...byMegapixels.map(work)) / work(first);
  return [
    '## How it grows',
    '',
    `Clock time, best of two. Starting (\`score --help\`) takes ${startMs.toFixed(0)} ms; decoding is`,
    'timed by itself. Larger and larger panels with one rip, all at',
    `${pxPerMm} px/mm:`,
    '',
    ...table(byArea),
    `Aim: time grows as area to a power of 0.9 to 1.2. Measured ${power.toFixed(2)}: ` +
      `${power >= 0.9 && power <= 1.2 ? 'reached' : 'missed'}.`,
    '',
    'The same panel photographed with more and more pixels (one drawing, enlarged), from the',
    'working density up:',
    '',
    ...table(byMegapixels),
    `Aim: flat beyond decoding, at most 1.25 of the first. Measured ${growth.toFixed(2)}: ` +
      `${growth <= 1.25 ? 'reached' : 'missed'}.`,
    '',
  ];
}

/** Slope of the straight line through the logarithms, by least squares. */
function exponent(points: readonly (readonly [number, number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (k: 0 | 1) => logs.reduce((sum, log) => sum + log[k], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const xy = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return xy / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}
