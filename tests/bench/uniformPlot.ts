/** Values that ought to be uniform on 0..1. */
export interface UniformSeries {
  readonly name: string;
  readonly p: readonly number[];
}

const colours: readonly string[] = ['#8a4b14', '#2b5d8a', '#4d7a2a', '#7a3b7d', '#555'];

/**
 * Sorted values against the uniform law with the 95 % Kolmogorov-Smirnov band of the longest series
 * (`banded`: where values are independent), as one SVG.
 */
export function uniformPlot(
  series: readonly UniformSeries[],
  what: { readonly x: string; readonly y: string; readonly banded: boolean },
) {
  const [left, top, size] = [56, 20, 320];
  const x = (v: number) => (left + size * v).toFixed(1);
  const y = (v: number) => (top + size * (1 - v)).toFixed(1);
  const ticks = [0, 0.25, 0.5, 0.75, 1];
  const n = Math.max(1, ...series.map(({ p }) => p.length));
  const band = what.banded ? Math.min(1, 1.36 / Math.sqrt(n)) : 0;
  const label = 'font-family="sans-serif" font-size="12" fill="#333"';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 400" width="400" height="400">
<rect width="400" height="400" fill="#fff"/>
<path d="M${x(0)} ${y(band)} L${x(1 - band)} ${y(1)} L${x(1)} ${y(1)} L${x(1)} ${y(1 - band)} L${x(band)} ${y(0)} L${x(0)} ${y(0)} Z" fill="#eee"/>
<path d="M${x(0)} ${y(0)} L${x(1)} ${y(1)}" stroke="#999" stroke-dasharray="4 3"/>
<rect x="${left}" y="${top}" width="${size}" height="${size}" fill="none" stroke="#333"/>
${ticks.map((t) => `<text x="${x(t)}" y="${top + size + 16}" text-anchor="middle" ${label}>${t}</text><text x="${left - 6}" y="${Number(y(t)) + 4}" text-anchor="end" ${label}>${t}</text>`).join('\n')}
${series.map(({ name, p }, i) => `<path d="${steps(p, x, y)}" fill="none" stroke="${colours[i]}" stroke-width="2"/><text x="${left + 12}" y="${top + 20 + 16 * i}" font-family="sans-serif" font-size="12" fill="${colours[i]}">${name}, n = ${p.length}</text>`).join('\n')}
<text x="${left + size / 2}" y="${top + size + 36}" text-anchor="middle" ${label}>${what.x}</text>
<text x="14" y="${top + size / 2}" text-anchor="middle" ${label} transform="rotate(-90 14 ${top + size / 2})">${what.y}</text>
</svg>
`;
}

function steps(p: readonly number[], x: (v: number) => string, y: (v: number) => string): string {
  const sorted = [...p].sort((a, b) => a - b);
  const corners = sorted.map(
    (v, i) => `L${x(v)} ${y(i / sorted.length)} L${x(v)} ${y((i + 1) / sorted.length)}`,
  );
  return `M${x(0)} ${y(0)} ${corners.join(' ')} L${x(1)} ${y(1)}`;
}
