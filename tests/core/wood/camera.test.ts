import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CornersPx } from '../../../src/core/image/photoScale.js';
import type { RgbImage } from '../../../src/core/image/rgbImage.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { aimCamera } from '../../../src/core/wood/aimCamera.js';
import { photograph } from '../../../src/core/wood/photograph.js';
import { invertHomography, quadHomography } from '../../../src/core/wood/quadHomography.js';

function greyImage(width: number, height: number, level: (x: number, y: number) => number) {
  const data = new Uint8Array(3 * width * height);
  for (let i = 0; i < width * height; i++) {
    data.fill(level(i % width, Math.floor(i / width)), 3 * i, 3 * i + 3);
  }
  return { width, height, data } satisfies RgbImage;
}

const frame = (w: number, h: number): CornersPx => [
  { x: 0, y: 0 },
  { x: w, y: 0 },
  { x: w, y: h },
  { x: 0, y: h },
];

const decode = (level: number) =>
  level / 255 <= 0.04045 ? level / 255 / 12.92 : ((level / 255 + 0.055) / 1.055) ** 2.4;

describe('quadHomography', () => {
  const jitter = fc.double({ min: -20, max: 20, noNaN: true });
  it('takes the unit square to the four corners, and its inverse back', () => {
    fc.assert(
      fc.property(fc.array(jitter, { minLength: 8, maxLength: 8 }), (j) => {
        const corners: CornersPx = [
          { x: j[0]!, y: j[1]! },
          { x: 100 + j[2]!, y: j[3]! },
          { x: 100 + j[4]!, y: 100 + j[5]! },
          { x: j[6]!, y: 100 + j[7]! },
        ];
        const m = quadHomography(corners);
        const back = invertHomography(m);
        const map = (h: readonly number[], x: number, y: number) => {
          const w = h[6]! * x + h[7]! * y + h[8]!;
          return [(h[0]! * x + h[1]! * y + h[2]!) / w, (h[3]! * x + h[4]! * y + h[5]!) / w];
        };
        for (const [i, s, t] of [
          [0, 0, 0],
          [1, 1, 0],
          [2, 1, 1],
          [3, 0, 1],
        ] as const) {
          const [x, y] = map(m, s, t);
          expect(x).toBeCloseTo(corners[i].x, 6);
          expect(y).toBeCloseTo(corners[i].y, 6);
          const [u, v] = map(back, x!, y!);
          expect(u).toBeCloseTo(s, 6);
          expect(v).toBeCloseTo(t, 6);
        }
      }),
    );
  });
});

describe('aimCamera', () => {
  it("sees a rectangle of the panel's own proportions when square on", () => {
    const [a, b, c] = aimCamera({
      panelWidthMm: 400,
      panelHeightMm: 200,
      widthPx: 1000,
      heightPx: 800,
      fill: 0.8,
    });
    expect(b.x - a.x).toBeCloseTo(800, 9);
    expect(c.y - b.y).toBeCloseTo(400, 9);
    expect(a.y).toBeCloseTo(200, 9);
  });

  it('makes the far side shorter: similar triangles', () => {
    const [a, b, c, d] = aimCamera({
      panelWidthMm: 400,
      panelHeightMm: 200,
      widthPx: 1000,
      heightPx: 800,
      yawDeg: 20,
      distanceMm: 600,
    });
    const depth = 200 * Math.sin((20 * Math.PI) / 180);
    // The left side is nearer by 2 x depth: heights go as one over the distance.
    expect((d.y - a.y) / (c.y - b.y)).toBeCloseTo((600 + depth) / (600 - depth), 9);
  });
});

describe('photograph', () => {
  const random = createRandom(2);
  const picture = greyImage(64, 48, () => random.integer(256));
  const plain = { widthPx: 64, heightPx: 48, cornersPx: frame(64, 48) };

  it('with an exact camera of the same size is the picture, softened only by its sampling', () => {
    const smooth = greyImage(64, 48, (x, y) => 60 + 2 * x + y);
    const { image } = photograph(smooth, plain);
    let largest = 0;
    for (let i = 0; i < image.data.length; i++) {
      largest = Math.max(largest, Math.abs(image.data[i]! - smooth.data[i]!));
    }
    expect(largest).toBeLessThan(2);
  });

  it('puts the panel where the corners say and the bench elsewhere', () => {
    const white = greyImage(40, 40, () => 255);
    const { image } = photograph(white, {
      widthPx: 60,
      heightPx: 60,
      cornersPx: [
        { x: 10, y: 15 },
        { x: 50, y: 10 },
        { x: 45, y: 50 },
        { x: 15, y: 45 },
      ],
    });
    const at = (x: number, y: number) => image.data[3 * (y * 60 + x)]!;
    expect(at(30, 30)).toBe(255);
    expect(at(12, 16)).toBe(255);
    expect(at(12, 12)).toBeLessThan(180);
    expect(at(5, 50)).toBeLessThan(180);
  });

  it('has the noise that its sensor would: variance = light / full well + read noise squared', () => {
    const grey = greyImage(150, 150, () => 150);
    const { image } = photograph(grey, {
      widthPx: 150,
      heightPx: 150,
      cornersPx: frame(150, 150),
      fullWell: 2000,
      readNoise: 0.01,
      seed: 5,
    });
    const light = decode(150);
    const values = Array.from(image.data, decode);
    const mean = values.reduce((s, v) => s + v, 0) / values.length;
    const variance = values.reduce((s, v) => s + (v - mean) ** 2, 0) / values.length;
    expect(Math.abs(mean - light)).toBeLessThan(0.002);
    expect(variance / (light / 2000 + 0.0001)).toBeCloseTo(1, 1);
  });

  it('lights one side more, and blurs without changing the mean', () => {
    const grey = greyImage(80, 40, (x) => (x % 8 < 4 ? 90 : 160));
    const camera = { widthPx: 80, heightPx: 40, cornersPx: frame(80, 40) };
    const mean = (image: RgbImage, x0: number, x1: number) => {
      let sum = 0;
      for (let y = 0; y < 40; y++) {
        for (let x = x0; x < x1; x++) sum += decode(image.data[3 * (80 * y + x)]!);
      }
      return sum / (40 * (x1 - x0));
    };
    const even = greyImage(80, 40, () => 120);
    const lit = photograph(even, { ...camera, lightAcross: 0.4 }).image;
    expect(mean(lit, 40, 80) / mean(lit, 0, 40)).toBeCloseTo(1.1 / 0.9, 2);
    const [sharp, soft] = [photograph(grey, camera), photograph(grey, { ...camera, blurPx: 2 })];
    expect(mean(soft.image, 8, 72)).toBeCloseTo(mean(sharp.image, 8, 72), 2);
    expect(Math.abs(soft.image.data[3 * 2040]! - 130)).toBeLessThan(20);
  });

  it('is the same for the same seed', () => {
    const noisy = { ...plain, fullWell: 500, seed: 3 };
    const first = photograph(picture, noisy).image.data;
    expect(photograph(picture, noisy).image.data).toEqual(first);
    expect(photograph(picture, { ...noisy, seed: 4 }).image.data).not.toEqual(first);
  });

  it('refuses corners that cross', () => {
    const [a, b, c, d] = frame(64, 48);
    expect(() => photograph(picture, { ...plain, cornersPx: [a, c, b, d] })).toThrow(/clockwise/);
  });
});
