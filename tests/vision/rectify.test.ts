import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CornersPx } from '../../src/core/image/photoScale.js';
import { loadOpenCv } from '../../src/vision/node/loadOpenCv.js';
import { rectify } from '../../src/vision/rectify.js';
import { homographyByEquations, photographFlat } from '../support/checkerPhoto.js';

const widthMm = 80;
const heightMm = 60;
const panelCorners = [
  { x: 0, y: 0 },
  { x: widthMm, y: 0 },
  { x: widthMm, y: heightMm },
  { x: 0, y: heightMm },
];

/** Slow waves both ways: smooth, so that their value at a place tells where the place is. */
const waves = (xMm: number, yMm: number) =>
  128 + 55 * Math.sin((2 * Math.PI * xMm) / 9) + 55 * Math.sin((2 * Math.PI * yMm) / 7);

const size = (cornersPx: CornersPx | null) =>
  ({ kind: 'size', widthMm, heightMm, cornersPx }) as const;

/** Corners of a photo taken somewhat aslant, 400 x 320 px. */
const aslantCorners = fc
  .array(fc.double({ min: -28, max: 28, noNaN: true }), { minLength: 8, maxLength: 8 })
  .map(
    (d): CornersPx => [
      { x: 40 + d[0], y: 40 + d[1] },
      { x: 360 + d[2], y: 40 + d[3] },
      { x: 360 + d[4], y: 280 + d[5] },
      { x: 40 + d[6], y: 280 + d[7] },
    ],
  );

describe('rectify by corners', () => {
  it('puts every place of the panel where a second homography says it is', async () => {
    await fc.assert(
      fc.asyncProperty(aslantCorners, async (corners) => {
        const photoToPanel = homographyByEquations(corners, panelCorners);
        const photo = photographFlat({ width: 400, height: 320, photoToPanel, shade: waves });
        const panel = await rectify(photo, size(corners), { vision: loadOpenCv });
        let worst = 0;
        for (let y = 2; y < panel.image.height - 2; y += 3) {
          for (let x = 2; x < panel.image.width - 2; x += 3) {
            const expected = waves((x + 0.5) / panel.pxPerMm, (y + 0.5) / panel.pxPerMm);
            const got = panel.image.data[3 * (y * panel.image.width + x)];
            worst = Math.max(worst, Math.abs(got - expected));
          }
        }
        // The steepest place changes by about 70 levels a mm, 20 a pixel: 6 levels are 0.3 px.
        expect(worst).toBeLessThan(6);
      }),
      { numRuns: 12 },
    );
  });

  it('never upsamples: no edge gets more working pixels than the photo has', async () => {
    await fc.assert(
      fc.asyncProperty(aslantCorners, async (corners) => {
        const photo = { width: 400, height: 320, data: new Uint8Array(3 * 400 * 320) };
        const panel = await rectify(photo, size(corners), { vision: loadOpenCv });
        const edges = corners.map((c, i) => {
          const next = corners[(i + 1) % 4];
          return Math.hypot(next.x - c.x, next.y - c.y);
        });
        expect(panel.image.width).toBeLessThanOrEqual(Math.min(edges[0], edges[2]) + 1);
        expect(panel.image.height).toBeLessThanOrEqual(Math.min(edges[1], edges[3]) + 1);
        expect(panel.pxPerMm).toBeLessThanOrEqual(7);
      }),
      { numRuns: 30 },
    );
  });

  it('averages fine lines away instead of folding them into coarse ones', async () => {
    const corners: CornersPx = [
      { x: 20, y: 30 },
      { x: 980, y: 20 },
      { x: 970, y: 740 },
      { x: 30, y: 730 },
    ];
    const photoToPanel = homographyByEquations(corners, panelCorners);
    const lines = (xMm: number) => 128 + 100 * Math.sign(Math.sin((2 * Math.PI * xMm) / 0.31));
    const photo = photographFlat({ width: 1000, height: 760, photoToPanel, shade: lines });
    const panel = await rectify(photo, size(corners), { vision: loadOpenCv, maxPxPerMm: 2 });
    const { width, height, data } = panel.image;
    const inside: number[] = [];
    for (let y = 5; y < height - 5; y++) {
      for (let x = 5; x < width - 5; x++) inside.push(data[3 * (y * width + x)]);
    }
    const mean = inside.reduce((a, b) => a + b) / inside.length;
    const rms = Math.sqrt(inside.reduce((a, b) => a + (b - mean) ** 2, 0) / inside.length);
    // Lines 0.31 mm apart cannot be shown at 2 px/mm. An area mean lets at most 21.7 % of a wave
    // past its first zero through (the sinc's first sidelobe): 0.217 * 127 / sqrt(2) = 19.5.
    expect(rms).toBeLessThan(19.5);
  });

  it('reads a grey of the photo back as the same grey', async () => {
    const photo = { width: 300, height: 260, data: new Uint8Array(3 * 300 * 260).fill(137) };
    const corners: CornersPx = [
      { x: 10, y: 12 },
      { x: 290, y: 8 },
      { x: 280, y: 250 },
      { x: 15, y: 240 },
    ];
    for (const maxPxPerMm of [7, 1.5]) {
      const panel = await rectify(photo, size(corners), { vision: loadOpenCv, maxPxPerMm });
      expect(new Set(panel.image.data)).toEqual(new Set([137]));
    }
  });
});

describe('rectify a square-on photo', () => {
  const photo = { width: 400, height: 300, data: new Uint8Array(3 * 400 * 300).fill(90) };
  const unused = () => Promise.reject(new Error('OpenCV is not needed here'));

  it('takes the whole frame without OpenCV and without touching a pixel', async () => {
    const panel = await rectify(photo, size(null), { vision: unused });
    expect(panel).toMatchObject({ pxPerMm: 5, widthMm, heightMm, notes: [] });
    expect(panel.image).toBe(photo);
  });

  it('works at 7 px/mm at most unless asked otherwise', async () => {
    const dense = { width: 1600, height: 1200, data: new Uint8Array(3 * 1600 * 1200).fill(90) };
    const panel = await rectify(dense, size(null), { vision: unused });
    expect(panel).toMatchObject({ pxPerMm: 7, image: { width: 560, height: 420 } });
  });

  it('takes px/mm, or one known distance, for the same panel', async () => {
    const byDensity = await rectify(photo, { kind: 'pxPerMm', pxPerMm: 4 }, { vision: unused });
    expect(byDensity).toMatchObject({ pxPerMm: 4, widthMm: 100, heightMm: 75 });
    const known = {
      kind: 'known',
      fromPx: { x: 50, y: 60 },
      toPx: { x: 350, y: 60 },
      lengthMm: 75,
    } as const;
    expect(await rectify(photo, known, { vision: unused })).toEqual(byDensity);
  });

  it('says when fine grain falls between the pixels', async () => {
    const panel = await rectify(photo, { kind: 'pxPerMm', pxPerMm: 2.4 }, { vision: unused });
    expect(panel.notes.join()).toMatch(/2\.4 px\/mm.*fine grain cannot be judged/);
  });

  it('says when size and photo differ in shape', async () => {
    const panel = await rectify(
      photo,
      { kind: 'size', widthMm: 80, heightMm: 50, cornersPx: null },
      { vision: unused },
    );
    expect(panel.notes.join()).toMatch(/shape differs.* 20 %/);
    expect(panel.pxPerMm).toBe(5);
  });
});
