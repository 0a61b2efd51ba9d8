import { describe, expect, it } from 'vitest';
import type { RgbImage } from '../../../src/core/image/rgbImage.js';
import { endSlides } from '../../../src/core/rip/frontCut.js';
import { frontSegments } from '../../../src/core/rip/frontSegments.js';
import { planingShiftMm } from '../../../src/core/rip/planing.js';
import { reglue } from '../../../src/core/rip/reglue.js';
import { reglueFront, reglueRips } from '../../../src/core/rip/reglueSpecs.js';
import { createBoard } from '../../../src/core/wood/createBoard.js';
import { drawerFrontPanel } from '../../../src/core/wood/drawerFrontPanel.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../../src/core/wood/onePiecePanel.js';

const panel = { widthMm: 200, heightMm: 100 };
const front = { xMm: 60, yMm: 30, widthMm: 90, heightMm: 40 };
const loss = { kerfMm: 3, dressMm: 0.5 };
const board = {
  seed: 4,
  setting: 'softwood',
  cut: 'flatsawn',
  lengthMm: 240,
  widthMm: 120,
} as const;

/** The wood model cuts the same front by its own arithmetic: the second implementation. */
function modelPanel(ends: 'stay' | 'close', revealMm = 0) {
  return drawerFrontPanel({
    ...{ board, lengthMm: panel.widthMm, widthMm: panel.heightMm, front, ...loss, revealMm },
    ends: ends === 'close' ? 'slideIn' : 'stay',
  });
}

const names: Record<string, string> = {
  'left end upper': 'upper left',
  'front upper': 'upper front',
  'right end upper': 'upper right',
  'left end lower': 'lower left',
  'front lower': 'lower front',
  'right end lower': 'lower right',
  'front left': 'left end',
  'front right': 'right end',
};

describe.each(['stay', 'close'] as const)('a front cut out, ends that %s', (ends) => {
  const slides = endSlides(ends, loss.kerfMm);
  const segments = frontSegments(front, loss, slides, panel.widthMm);

  it('has the joints of the wood model, each with its loss and slide', () => {
    const { seams } = modelPanel(ends);
    expect(segments).toHaveLength(seams.length);
    for (const { piece, edge, etaAMm, etaBMm, slideMm } of segments) {
      const seam = seams.find(({ id }) => id === names[`${piece} ${edge}`]);
      expect(etaBMm - etaAMm, `${piece} ${edge}`).toBeCloseTo(seam?.lostMm ?? -1, 9);
      expect(slideMm, `${piece} ${edge}`).toBeCloseTo(seam?.slideMm ?? -1, 9);
    }
  });

  it('is glued up as the wood model draws it', () => {
    const pxPerMm = 4;
    const uncut = drawPanel(onePiecePanel({ board, ...panel }), { pxPerMm }).image;
    const spec = reglueFront(panel, front, loss, slides, 0);
    const mine = reglue(uncut, pxPerMm, spec);
    const { image: theirs } = drawPanel(modelPanel(ends), { pxPerMm });
    expect([mine.width, mine.height]).toEqual([theirs.width, theirs.height]);
    const { seams } = modelPanel(ends);
    const apart = meanDifference(mine, theirs, (x, y) =>
      seams.every(({ line }) => distance(x / pxPerMm, y / pxPerMm, line) > 2.5),
    );
    // Two drawings of one wood differ by their pores' chance and half a pixel; other wood by 12.
    expect(apart).toBeLessThan(2);
  });
});

function distance(
  x: number,
  y: number,
  l: { x1Mm: number; y1Mm: number; x2Mm: number; y2Mm: number },
) {
  const cx = Math.min(Math.max(x, Math.min(l.x1Mm, l.x2Mm)), Math.max(l.x1Mm, l.x2Mm));
  const cy = Math.min(Math.max(y, Math.min(l.y1Mm, l.y2Mm)), Math.max(l.y1Mm, l.y2Mm));
  return Math.hypot(x - cx, y - cy);
}

function meanDifference(a: RgbImage, b: RgbImage, counts: (x: number, y: number) => boolean) {
  let sum = 0;
  let n = 0;
  for (let y = 0; y < a.height; y++) {
    for (let x = 0; x < a.width; x++) {
      if (!counts(x + 0.5, y + 0.5)) continue;
      const i = 3 * (y * a.width + x);
      sum += Math.abs(a.data[i]! - b.data[i]!);
      n++;
    }
  }
  return sum / n;
}

describe('a panel glued up again', () => {
  const image: RgbImage = {
    width: 40,
    height: 30,
    data: Uint8Array.from({ length: 3600 }, (_, i) => (i * 7919) % 251),
  };
  const rowOf = ({ width, data }: RgbImage, y: number) =>
    Array.from(data.subarray(3 * y * width, 3 * (y + 1) * width));

  it('has lost exactly the rows of the kerfs', () => {
    const size = { widthMm: 20, heightMm: 15 };
    const out = reglue(image, 2, reglueRips(size, [10, 4], { kerfMm: 1, dressMm: 0.5 }));
    expect([out.width, out.height]).toEqual([40, 22]);
    const kept = Array.from({ length: 30 }, (_, y) => y).filter(
      (y) => !(y >= 6 && y < 10) && !(y >= 18 && y < 22),
    );
    expect(kept.map((_, y) => rowOf(out, y))).toEqual(kept.map((y) => rowOf(image, y)));
  });

  it('is the uncut panel when nothing is lost', () => {
    const out = reglue(
      image,
      2,
      reglueRips({ widthMm: 20, heightMm: 15 }, [7], { kerfMm: 0, dressMm: 0 }),
    );
    expect(Array.from(out.data)).toEqual(Array.from(image.data));
  });
});

describe('planing', () => {
  it('moves a line by t / tan(ring angle)', () => {
    expect(planingShiftMm(0.5, Math.PI / 4)).toBeCloseTo(0.5, 12);
    expect(planingShiftMm(1, Math.PI / 2)).toBeCloseTo(0, 12);
    // tan(10 deg) = 0.17633.
    expect(planingShiftMm(1, (10 * Math.PI) / 180)).toBeCloseTo(5.6713, 3);
  });

  it('agrees with the wood model: where the same age lies on the planed face', () => {
    const flat = createBoard({ ...board, waviness: 0, pithYMm: 60, pithDepthMm: 70 });
    const at = { ageMm: 0, dx: 0, dy: 0, dz: 0 };
    for (const [x, y] of [
      [60, 20],
      [120, 95],
      [180, 30],
    ] as const) {
      const t = 0.02;
      flat.field.sample(x, y, 0, at);
      const { ageMm, dx, dy, dz } = at;
      const across = Math.hypot(dx, dy);
      const ringAngle = Math.atan2(across, Math.abs(dz));
      // Walk across the grain on the planed face until the same age comes back.
      const along = (far: number) => {
        flat.field.sample(x + (far * dx) / across, y + (far * dy) / across, t, at);
        return at.ageMm - ageMm;
      };
      let [low, high] = dz > 0 ? [-1, 0] : [0, 1];
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (along(middle) < 0) low = middle;
        else high = middle;
      }
      const moved = Math.abs((low + high) / 2);
      expect(moved / planingShiftMm(t, ringAngle)).toBeCloseTo(1, 1);
    }
  });
});
