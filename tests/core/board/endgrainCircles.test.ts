import { describe, expect, it } from 'vitest';
import { endgrainPanel } from '../../../src/core/pipeline/endgrainPanel.js';
import { createRandom } from '../../../src/core/random/createRandom.js';

const [widthMm, heightMm, pxPerMm] = [150, 25, 7];

/** An end whose rings are exact circles about a pith, even as a sinusoid. */
function circles(pithXMm: number, pithYMm: number, ringMm: number) {
  const random = createRandom(4);
  const [width, height] = [widthMm * pxPerMm, heightMm * pxPerMm];
  const data = new Uint8Array(3 * width * height);
  for (let i = 0; i < width * height; i++) {
    const x = ((i % width) + 0.5) / pxPerMm - pithXMm;
    const y = (Math.floor(i / width) + 0.5) / pxPerMm - pithYMm;
    const rings = Math.sin((2 * Math.PI * Math.hypot(x, y)) / ringMm);
    const light = 1 + 0.12 * rings + 0.03 * random.normal();
    data.set(
      [170, 135, 95].map((level) => level * light),
      3 * i,
    );
  }
  return { image: { width, height, data }, widthMm, heightMm, pxPerMm, notes: [] };
}

describe('rings that are exact circles', () => {
  it.each([
    [75, 60, 4],
    [-40, 12, 3],
    [-60, 120, 2],
    [75, 400, 4],
  ])('about %d, %d mm, %d mm apart, are rings and not the marks of a saw', (x, y, ringMm) => {
    const result = endgrainPanel(circles(x, y, ringMm));
    const off = Math.hypot(result.pith!.xMm - x, result.pith!.yMm - y);
    expect(off).toBeLessThan(3 * result.pith!.seMm);
    expect(off).toBeLessThan(0.1 * Math.hypot(x - widthMm / 2, y - heightMm / 2));
    for (const { xMm, angleDeg } of result.ringAngle) {
      const circle = Math.atan2(Math.abs(xMm - x), Math.abs(heightMm / 2 - y));
      expect(Math.abs(angleDeg - (circle * 180) / Math.PI)).toBeLessThan(1);
    }
    expect(result.ringWidthMm.median! / ringMm).toBeCloseTo(1, 1);
    expect(result.sawMarks).toBe(false);
  });

  it('may be a saw’s marks all the same, and the answer says so', () => {
    const { notes } = endgrainPanel(circles(75, 400, 4));
    expect(notes.join(' ')).toMatch(/as exactly as a saw’s marks/);
  });
});
