import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/random/createRandom.js';
import { loadOpenCv } from '../../src/vision/node/loadOpenCv.js';
import { guessPanelCorners } from '../../src/vision/outline/guessPanelCorners.js';
import { homographyByEquations, mapPoint } from '../support/checkerPhoto.js';
import { countingOpenCv } from '../support/countingOpenCv.js';

const width = 640;
const height = 480;
const benches = { darkBench: [52, 48, 45], greyFloor: [128, 128, 124], sheet: [228, 226, 220] };
const woods = { maple: [214, 184, 146], walnut: [104, 74, 54], cherry: [170, 112, 76] };

const scenes = fc.record({
  bench: fc.constantFrom(benches.darkBench, benches.greyFloor, benches.sheet),
  wood: fc.constantFrom(woods.maple, woods.walnut, woods.cherry),
  aslant: fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 8, maxLength: 8 }),
  light: fc.double({ min: -0.25, max: 0.25, noNaN: true }),
  seed: fc.integer({ min: 0, max: 1e6 }),
});

/** A striped board on a speckled bench under light that falls off to one side. */
function paintScene({
  bench,
  wood,
  aslant: d,
  light,
  seed,
}: typeof scenes extends fc.Arbitrary<infer S> ? S : never) {
  const corners = [
    { x: 110 + d[0], y: 90 + d[1] },
    { x: 530 + d[2], y: 90 + d[3] },
    { x: 530 + d[4], y: 390 + d[5] },
    { x: 110 + d[6], y: 390 + d[7] },
  ];
  const square = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: 0, y: 1 },
  ];
  const toPanel = homographyByEquations(corners, square);
  const random = createRandom(seed);
  const data = new Uint8Array(3 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = mapPoint(toPanel, x + 0.5, y + 0.5);
      const inside = at.x > 0 && at.x < 1 && at.y > 0 && at.y < 1;
      const stripe = 1 + 0.12 * Math.sin(90 * at.y + 8 * at.x + 3 * Math.sin(6 * at.x));
      const lamp = 1 + light * (x / width - 0.5);
      for (let c = 0; c < 3; c++) {
        const clean = (inside ? wood[c] * stripe : bench[c]) * lamp;
        data[3 * (y * width + x) + c] = Math.min(
          255,
          Math.max(0, clean + 10 * (random.next() - 0.5)),
        );
      }
    }
  }
  return { photo: { width, height, data }, corners };
}

describe('guessPanelCorners', () => {
  it('finds the panel within 4 px in nine photos out of ten, and never elsewhere', async () => {
    const { cv } = await loadOpenCv();
    let good = 0;
    let bad = 0;
    let total = 0;
    fc.assert(
      fc.property(scenes, (scene) => {
        const { photo, corners } = paintScene(scene);
        const guess = guessPanelCorners(cv, photo);
        total++;
        if (!guess) return;
        const off = Math.max(
          ...guess.map(({ x, y }, i) => Math.hypot(x - corners[i].x, y - corners[i].y)),
        );
        if (off < 4) good++;
        else bad++;
      }),
      { numRuns: 16, seed: 7 },
    );
    expect(good / total).toBeGreaterThan(0.9);
    expect(bad).toBe(0);
  });

  it('offers nothing where no panel stands out', async () => {
    const { cv } = await loadOpenCv();
    const random = createRandom(3);
    const speckle = Uint8Array.from({ length: 3 * width * height }, () => 100 + 30 * random.next());
    expect(guessPanelCorners(cv, { width, height, data: speckle })).toBeNull();
    const plain = new Uint8Array(3 * width * height).fill(128);
    expect(guessPanelCorners(cv, { width, height, data: plain })).toBeNull();
  });

  it('gives every matrix back', async () => {
    const counting = countingOpenCv((await loadOpenCv()).cv);
    const scene = {
      bench: benches.darkBench,
      wood: woods.maple,
      aslant: Array(8).fill(5),
      light: 0,
      seed: 1,
    };
    expect(guessPanelCorners(counting.cv, paintScene(scene).photo)).not.toBeNull();
    expect(counting.made()).toBeGreaterThan(3);
    expect(counting.alive()).toBe(0);
  });
});
