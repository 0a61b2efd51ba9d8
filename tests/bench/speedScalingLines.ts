import type { Scaling, ScalingRow } from './speedScaling.js';

/** The scaling tables of docs/speed.md. */
export function scalingLines({ tiny, pxPerMm, byArea, byMegapixels }: Scaling): string[] {
  const work = (row: ScalingRow) => row.wallMs - row.decodeMs - (tiny.wallMs - tiny.decodeMs);
  const table = (rows: readonly ScalingRow[]) => [
    '| panel, m2 | MP | joints found | `score`, ms | decoding, ms | left, ms |',
    '|---|---|---|---|---|---|',
    ...rows.map((row) => {
      const cells = [row.areaM2.toFixed(3), row.megapixels.toFixed(1), `${row.joints}`];
      const times = [row.wallMs, row.decodeMs, work(row)].map((ms) => ms.toFixed(0));
      return `| ${[...cells, ...times].join(' | ')} |`;
    }),
    '',
  ];
  const power = exponent(byArea.map((row) => [row.areaM2, work(row)]));
  const lastPower = exponent(byArea.slice(-2).map((row) => [row.areaM2, work(row)]));
  const [first] = byMegapixels;
  const growth = Math.max(...byMegapixels.map(work)) / work(first);
  return [
    '## How it grows',
    '',
    'Clock time, best of three. Taken off before anything is compared:',
    '',
    `- the fixed cost, ${(tiny.wallMs - tiny.decodeMs).toFixed(0)} ms: the whole of \`score\` on a panel of`,
    `  ${(1e4 * tiny.areaM2).toFixed(0)} cm2 with one rip at ${pxPerMm} px/mm (${tiny.megapixels.toFixed(2)} MP), less its decoding. It is Node`,
    '  starting, loading code, and next to no measuring;',
    '- the decoding of the same file, timed by itself in a running process.',
    '',
    'What is left holds the measuring, the averaging down to the working density, and the first,',
    'slower rounds of code that is not yet compiled.',
    '',
    `Larger and larger panels with one rip, all at ${pxPerMm} px/mm:`,
    '',
    ...table(byArea),
    `Aim: what is left grows as area to a power of 0.9 to 1.2. Measured ${power.toFixed(2)} ` +
      `(least squares over all; ${lastPower.toFixed(2)} from the last but one to the last): ` +
      `${power >= 0.9 && power <= 1.2 ? 'reached' : 'missed'}.`,
    '',
    'The same panel photographed with more and more pixels (one drawing, enlarged), from the',
    'working density up:',
    '',
    ...table(byMegapixels),
    `Aim: flat beyond decoding, what is left at most 1.25 of the first. Measured ${growth.toFixed(2)}: ` +
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
