import { describe, expect, it } from 'vitest';
import { linearLight } from '../../../src/core/colour/linearLight.js';
import { linearRgbToLab } from '../../../src/core/colour/linearRgbToLab.js';
import type { RgbImage } from '../../../src/core/image/rgbImage.js';
import { crosscutPanel } from '../../../src/core/wood/crosscutPanel.js';
import { drawerFrontPanel } from '../../../src/core/wood/drawerFrontPanel.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { mixedBoardsPanel } from '../../../src/core/wood/mixedBoardsPanel.js';
import { onePiecePanel } from '../../../src/core/wood/onePiecePanel.js';
import type { PanelTruth } from '../../../src/core/wood/panelTruth.js';
import { ripPanel } from '../../../src/core/wood/ripPanel.js';
import { bareBoard } from './bareBoard.js';

const pxPerMm = 4;
const oak = { seed: 3, setting: 'ring-porous', cut: 'flatsawn' } as const;
const size = { board: oak, widthMm: 120, heightMm: 60, uMm: 80, vMm: 70 };
const uncut = drawPanel(onePiecePanel({ ...size, heightMm: 70, widthMm: 130 }), { pxPerMm });

/** Largest difference in levels between two pictures, the second shifted, over a pixel box. */
function largestDifference(
  a: RgbImage,
  b: RgbImage,
  box: readonly [number, number, number, number],
  shift: readonly [number, number],
): number {
  let largest = 0;
  for (let y = box[1]; y < box[3]; y++) {
    for (let x = box[0]; x < box[2]; x++) {
      for (let c = 0; c < 3; c++) {
        const p = a.data[3 * (y * a.width + x) + c]!;
        const q = b.data[3 * ((y + shift[1]) * b.width + x + shift[0]) + c]!;
        largest = Math.max(largest, Math.abs(p - q));
      }
    }
  }
  return largest;
}

describe('a cut that loses nothing', () => {
  it.each([0, 0.03, -0.05])('is the uncut face (rip tilted %f rad)', (tiltRad) => {
    const cut = drawPanel(ripPanel({ ...size, cuts: [{ atMm: 31, tiltRad }] }), { pxPerMm });
    expect(largestDifference(cut.image, uncut.image, [0, 0, 480, 240], [0, 0])).toBeLessThan(2);
  });

  it('is the uncut face (two crosscuts)', () => {
    const cuts = [{ atMm: 40.3, tiltRad: 0.02 }, { atMm: 80 }];
    const cut = drawPanel(crosscutPanel({ ...size, cuts }), { pxPerMm });
    expect(largestDifference(cut.image, uncut.image, [0, 0, 480, 240], [0, 0])).toBeLessThan(2);
  });
});

describe('a cut that loses width', () => {
  it('moves what lies below by exactly the loss, and A by the slide', () => {
    const lostMm = 3.25;
    const slideMm = 2.5;
    const panel = ripPanel({ ...size, cuts: [{ atMm: 30, lostMm, slideMm }] });
    const { image } = drawPanel(panel, { pxPerMm });
    // A is anchored; against it B shows content u further along, which is A moved +u against B.
    expect(largestDifference(image, uncut.image, [0, 0, 480, 120], [0, 0])).toBeLessThan(2);
    expect(largestDifference(image, uncut.image, [0, 120, 480, 240], [10, 13])).toBeLessThan(2);
    expect(largestDifference(image, uncut.image, [0, 120, 480, 240], [0, 0])).toBeGreaterThan(20);
  });

  it('does so at a crosscut, the slide along +y', () => {
    const panel = crosscutPanel({ ...size, cuts: [{ atMm: 60, lostMm: 3, slideMm: 1.5 }] });
    const { image } = drawPanel(panel, { pxPerMm });
    expect(largestDifference(image, uncut.image, [0, 0, 240, 240], [0, 0])).toBeLessThan(2);
    expect(largestDifference(image, uncut.image, [240, 0, 480, 230], [12, 6])).toBeLessThan(2);
  });

  it('loses more at one end when wedged', () => {
    const spec = ripPanel({
      ...size,
      board: bareBoard({ pithYMm: -300, pithDepthMm: 0, taperMmPerM: 0 }),
      cuts: [{ atMm: 30, lostMm: 2, wedgeMmPerM: 10 }],
    });
    const { truth } = drawPanel(spec, { pxPerMm: 1 });
    const lost = (x: number) =>
      truth.ringLineOfPiece(1, x, 30).ageMm - truth.ringLineOfPiece(0, x, 30).ageMm;
    expect(lost(60)).toBeCloseTo(2, 6);
    expect(lost(120) - lost(0)).toBeCloseTo(1.2, 3);
  });
});

it('a wedged crosscut loses more lower down', () => {
  const spec = crosscutPanel({
    ...size,
    board: bareBoard({ slopeInFaceDeg: 45, pithYMm: -300, pithDepthMm: 0, taperMmPerM: 0 }),
    cuts: [{ atMm: 60, lostMm: 2, wedgeMmPerM: 10 }],
  });
  const { truth } = drawPanel(spec, { pxPerMm: 1 });
  const lost = (y: number) =>
    truth.ringLineOfPiece(0, 60, y).ageMm - truth.ringLineOfPiece(1, 60, y).ageMm;
  // Grain at 45 deg: 1 mm of loss along x moves the age by sin 45.
  expect(lost(30)).toBeCloseTo(2 * Math.SQRT1_2, 6);
  expect(lost(60) - lost(0)).toBeCloseTo(0.6 * Math.SQRT1_2, 2);
});

/** Rings that A and B are apart across the seam at (x, y). */
function ringsApart(truth: PanelTruth, x: number, y: number, widthMm: number): number {
  return (truth.ringLineOfPiece(1, x, y).ageMm - truth.ringLineOfPiece(0, x, y).ageMm) / widthMm;
}

describe('facts of the trade', () => {
  // trade.md, arithmetic of this job [D]: L sin(theta) / w rings; L 3.2 mm, w 1.5 mm.
  it.each([
    [90, 2.1],
    [10, 0.37],
  ])('a rip of 3.2 mm at ring angle %d deg loses %f rings of 1.5 mm', (deg, rings) => {
    const angle = (deg * Math.PI) / 180;
    const board = bareBoard({
      ringWidthMm: 1.5,
      taperMmPerM: 0,
      pithYMm: 30 - 400 * Math.sin(angle),
      pithDepthMm: 400 * Math.cos(angle),
    });
    const spec = ripPanel({
      board,
      widthMm: 100,
      heightMm: 60,
      cuts: [{ atMm: 30, lostMm: 3.2 }],
    });
    const { truth } = drawPanel(spec, { pxPerMm: 1 });
    expect(Math.abs(ringsApart(truth, 50, 30, 1.5) - rings)).toBeLessThan(0.04);
  });

  // Method section 5: best slide u* = k cot(theta), upper piece in +x relative to the lower.
  it.each([5, -8])('a slide of k cot(theta) brings lines at %d deg back', (slopeInFaceDeg) => {
    const theta = (slopeInFaceDeg * Math.PI) / 180;
    const lostMm = 3.175;
    const spec = ripPanel({
      board: bareBoard({ slopeInFaceDeg, taperMmPerM: 0, pithYMm: -900, pithDepthMm: 0 }),
      widthMm: 100,
      heightMm: 60,
      uMm: 250,
      cuts: [{ atMm: 30, lostMm, slideMm: lostMm / Math.tan(theta) }],
    });
    const { truth } = drawPanel(spec, { pxPerMm: 1 });
    expect(truth.grainAngleRad(20, 10)).toBeCloseTo(theta, 6);
    for (const x of [5, 50, 95]) expect(Math.abs(ringsApart(truth, x, 30, 2))).toBeLessThan(1e-6);
  });

  it('offset across the grain is g cos(theta) - u sin(theta)', () => {
    const theta = (6 * Math.PI) / 180;
    const [lostMm, slideMm] = [2.4, 7];
    const spec = ripPanel({
      board: bareBoard({ slopeInFaceDeg: 6, taperMmPerM: 0, pithYMm: -900, pithDepthMm: 0 }),
      widthMm: 100,
      heightMm: 60,
      cuts: [{ atMm: 30, lostMm, slideMm }],
    });
    const { truth } = drawPanel(spec, { pxPerMm: 1 });
    const delta = ringsApart(truth, 50, 30, 1);
    expect(delta).toBeCloseTo(lostMm * Math.cos(theta) - slideMm * Math.sin(theta), 6);
  });
});

describe('a drawer front cut from its panel', () => {
  const options = {
    board: { ...oak, waviness: 0.5 },
    lengthMm: 300,
    widthMm: 140,
    front: { xMm: 80, yMm: 45, widthMm: 140, heightMm: 50 },
    kerfMm: 3,
    dressMm: 0.5,
  };

  it('is narrower by two losses and keeps every piece at its station when the ends stay', () => {
    const { truth } = drawPanel(drawerFrontPanel({ ...options, ends: 'stay' }), { pxPerMm: 1 });
    const whole = drawPanel(onePiecePanel({ board: options.board, widthMm: 300, heightMm: 140 }), {
      pxPerMm: 1,
    }).truth;
    expect(truth.heightMm).toBe(140 - 2 * 4);
    expect(truth.widthMm).toBe(300);
    const ageOf = (x: number, y: number) => truth.ringLineOfPiece(truth.pieceAt(x, y), x, y).ageMm;
    const ageBefore = (x: number, y: number) => whole.ringLineOfPiece(0, x, y).ageMm;
    expect(ageOf(150, 20)).toBeCloseTo(ageBefore(150, 20), 9); // upper rail
    expect(ageOf(150, 60)).toBeCloseTo(ageBefore(150, 64), 9); // front
    expect(ageOf(20, 60)).toBeCloseTo(ageBefore(20, 64), 9); // left end
    expect(ageOf(150, 120)).toBeCloseTo(ageBefore(150, 128), 9); // lower rail
  });

  it('carries the ends in by a kerf when they close up', () => {
    const { truth } = drawPanel(drawerFrontPanel({ ...options, ends: 'slideIn' }), { pxPerMm: 1 });
    expect(truth.widthMm).toBe(300 - 2 * 3);
    const slides = Object.fromEntries(truth.seams.map((s) => [s.id, [s.lostMm, s.slideMm]]));
    // The left end has moved +x against the upper rail, so the rail (A) has moved -x.
    expect(slides).toEqual({
      'upper left': [4, -3],
      'upper front': [4, 0],
      'upper right': [4, 3],
      'lower left': [4, 3],
      'lower front': [4, 0],
      'lower right': [4, -3],
      'left end': [3, 0],
      'right end': [3, 0],
    });
    // The truth's slide agrees with where the wood went.
    const at = (piece: number, x: number, y: number) => truth.ringLineOfPiece(piece, x, y).ageMm;
    expect(at(1, 10 + 3, 60)).toBeCloseTo(at(2, 10, 60), 9);
    expect(at(3, 250 - 3, 60)).toBeCloseTo(at(2, 250, 60), 9);
  });
});

describe('the drawn panel', () => {
  it('is the same every time and another with another seed', () => {
    const spec = onePiecePanel({ ...size, widthMm: 40, heightMm: 20 });
    const again = onePiecePanel({ ...size, widthMm: 40, heightMm: 20, board: { ...oak, seed: 4 } });
    const first = drawPanel(spec, { pxPerMm }).image.data;
    expect(drawPanel(spec, { pxPerMm }).image.data).toEqual(first);
    expect(drawPanel(again, { pxPerMm }).image.data).not.toEqual(first);
  });

  it('keeps its tone along the true grain and changes it across', () => {
    const board = bareBoard({ setting: 'softwood', waviness: 1, pithDepthMm: 20, pithYMm: -60 });
    const { image, truth } = drawPanel(onePiecePanel({ board, widthMm: 160, heightMm: 60 }), {
      pxPerMm: 6,
    });
    const level = (x: number, y: number) =>
      image.data[3 * (Math.floor(y * 6) * image.width + Math.floor(x * 6)) + 1]!;
    let [along, across, count] = [0, 0, 0];
    for (let x = 20; x < 140; x += 2.3) {
      for (let y = 10; y < 50; y += 2.9) {
        const angle = truth.grainAngleRad(x, y);
        const half = truth.ringSpacingMm(x, y) / 2;
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        along += Math.abs(level(x + 4 * cos, y + 4 * sin) - level(x, y));
        across += Math.abs(level(x - half * sin, y + half * cos) - level(x, y));
        count++;
      }
    }
    expect(along / count).toBeLessThan(0.25 * (across / count));
  });

  it('turns a board end for end when asked, and knows it', () => {
    const base = { board: bareBoard({ waviness: 1 }), heightMm: 40, uMm: 100, vMm: 30 };
    const straight = mixedBoardsPanel({ widthMm: 90, boards: [base] });
    const turned = mixedBoardsPanel({ widthMm: 90, boards: [{ ...base, turned: true }] });
    const [a, b] = [straight, turned].map((spec) => drawPanel(spec, { pxPerMm: 2 }));
    expect(b!.truth.grainAngleRad(20, 10)).toBeCloseTo(a!.truth.grainAngleRad(70, 30), 9);
    const [p, q] = [a!.image.data, b!.image.data];
    let largest = 0;
    for (let i = 0; i < p.length / 3; i++) {
      largest = Math.max(largest, Math.abs(p[3 * i]! - q[p.length - 3 - 3 * i]!));
    }
    expect(largest).toBeLessThan(2);
  });

  it('has the colour step that its truth states, between boards and within one', () => {
    const bare = { texture: 0, waviness: 0, widthMm: 100 };
    const step = { dL: -4, da: 1.5, db: 2 };
    const spec = mixedBoardsPanel({
      widthMm: 100,
      boards: [
        { board: { ...bareBoard(), ...bare, pithYMm: -200, pithDepthMm: 0 }, heightMm: 60 },
        {
          board: { ...bareBoard({ seed: 6 }), ...bare, pithYMm: -200, pithDepthMm: 0 },
          heightMm: 60,
        },
        {
          board: { ...bareBoard({ seed: 6 }), ...bare, pithYMm: -200, pithDepthMm: 0 },
          heightMm: 60,
          colourShift: step,
        },
      ],
    });
    const { image, truth } = drawPanel(spec, { pxPerMm: 3 });
    const labOf = (y0: number) => {
      const sum = [0, 0, 0];
      for (let y = 3 * y0; y < 3 * (y0 + 56); y++) {
        for (let x = 0; x < image.width; x++) {
          for (let c = 0; c < 3; c++)
            sum[c]! += linearLight(image.data[3 * (y * image.width + x) + c]!);
        }
      }
      return linearRgbToLab(
        ...(sum.map((s) => s / (image.width * 168)) as [number, number, number]),
      );
    };
    const labs = [2, 62, 122].map(labOf);
    truth.seams.forEach(({ colourStep }, i) => {
      expect(Math.abs(labs[i + 1]![0] - labs[i]![0] - colourStep.dL)).toBeLessThan(0.6);
      expect(Math.abs(labs[i + 1]![1] - labs[i]![1] - colourStep.da)).toBeLessThan(0.4);
      expect(Math.abs(labs[i + 1]![2] - labs[i]![2] - colourStep.db)).toBeLessThan(0.6);
    });
    expect(truth.seams[1]!.colourStep.dL).toBeLessThan(-3);
  });

  it('draws a glue line of the width and contrast that its truth states', () => {
    const glue = { glueWidthMm: 0.5, glueContrast: 0.4 };
    const plain = drawPanel(ripPanel({ ...size, cuts: [{ atMm: 30 }] }), { pxPerMm });
    const glued = drawPanel(ripPanel({ ...size, cuts: [{ atMm: 30, ...glue }] }), { pxPerMm });
    const linear = (image: RgbImage, y: number) => {
      let sum = 0;
      for (let x = 0; x < image.width; x++) {
        const level = image.data[3 * (y * image.width + x) + 1]! / 255;
        sum += level <= 0.04045 ? level / 12.92 : ((level + 0.055) / 1.055) ** 2.4;
      }
      return sum;
    };
    // 0.5 mm at 4 px/mm is two whole rows, 119 and 120.
    for (const [row, kept] of [
      [118, 1],
      [119, 0.6],
      [120, 0.6],
      [121, 1],
    ] as const) {
      expect(linear(glued.image, row) / linear(plain.image, row)).toBeCloseTo(kept, 1);
    }
  });

  it('refuses what cannot be drawn, in words', () => {
    const spec = onePiecePanel({ ...size, widthMm: 0 });
    expect(() => drawPanel(spec, { pxPerMm })).toThrow(/Cannot draw a panel/);
    expect(() => ripPanel({ ...size, cuts: [{ atMm: 40 }, { atMm: 20 }] })).toThrow(/Cut 2/);
  });
});
