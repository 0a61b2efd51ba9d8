import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { lineMeasures } from '../../../src/core/seam/lineMeasures.js';
import { ownLines } from '../../../src/core/seam/ownLines.js';
import { seamFrame } from '../../../src/core/seam/seamFrame.js';
import { seamVisibility } from '../../../src/core/seam/seamVisibility.js';
import { seamWood } from '../../../src/core/seam/seamWood.js';
import { gratingPlanes } from './gratingJoint.js';

describe('a step of colour that the boards’ own lines have too', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('is drawn only where it makes the joint (%i)', (seed) => {
    const size = { widthMm: 160, heightMm: 100, seamYMm: 50 };
    const planes = gratingPlanes({ ...size, angleDeg: 10, spacingMm: 5, contrast: 0.1 });
    const random = createRandom(seed);
    const { width, height, data } = planes.lab.lightness;
    const steps = Array.from({ length: height }, () => 0);
    for (let row = 1; row < height; row++) {
      steps[row] = steps[row - 1]! + (row % 5 === 0 ? random.normal() : 0);
    }
    for (let i = 0; i < data.length; i++) data[i]! += 2 * steps[Math.floor(i / width)]!;
    const wood = seamWood(planes, seamFrame({ x1Mm: 0, y1Mm: 50, x2Mm: 160, y2Mm: 50 }), 50, 50);
    const seam = lineMeasures(wood, 0, 10.5);
    const own = ownLines(wood, { aMm: 50, bMm: 50 }, 10.5, () => true);
    const { cue, windows } = seamVisibility(seam, own, 600);
    if (cue !== 'colour') for (const window of windows) expect(window.cue).not.toBe('colour');
    else expect(Math.max(...windows.map(({ v }) => v ?? 0))).toBeGreaterThan(0);
  });
});
