import { describe, expect, it } from 'vitest';
import type { PanelPhoto } from '../../../src/core/image/panelPhoto.js';
import { defaultScoreOptions, type ScoreOptions } from '../../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../../src/core/pipeline/scorePanel.js';
import { createRandom } from '../../../src/core/random/createRandom.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { ripPanel } from '../../../src/core/wood/ripPanel.js';
import { gratingPlanes, greyPhoto, ripAt } from '../seam/gratingJoint.js';
import { expectFinite } from './expectFinite.js';

const pxPerMm = 4;
const [widthMm, heightMm] = [130, 80];

function painted(w: number, h: number, grey: (x: number, y: number) => number): PanelPhoto {
  const [width, height] = [Math.round(w * pxPerMm), Math.round(h * pxPerMm)];
  const data = new Uint8Array(3 * width * height);
  for (let i = 0; i < width * height; i++) {
    data.fill(grey(i % width, Math.floor(i / width)), 3 * i, 3 * i + 3);
  }
  return { image: { width, height, data }, pxPerMm, widthMm: w, heightMm: h, notes: [] };
}

const wood = (() => {
  const board = {
    seed: 77,
    setting: 'ring-porous',
    cut: 'flatsawn',
    knots: [{ xMm: 65, yMm: 42, radiusMm: 6 }],
  } as const;
  const cuts = [{ atMm: 40, lostMm: 3.175, glueWidthMm: 0.3 }];
  const { image } = drawPanel(ripPanel({ board, widthMm, heightMm, cuts }), { pxPerMm });
  return { image, pxPerMm, widthMm, heightMm, notes: [] } satisfies PanelPhoto;
})();

function score(photo: PanelPhoto, options: Partial<ScoreOptions> = {}) {
  const result = scorePanel(photo, { ...defaultScoreOptions, ...options });
  expectFinite(result);
  return result;
}
const middle = ripAt(40, widthMm);

describe('score of what it cannot measure well answers with notes, in finite numbers', () => {
  it('a panel smaller than two windows', () => {
    for (const [w, h] of [
      [18, 16],
      [14, 60],
      [60, 13],
      [4, 3],
    ] as const) {
      const result = score(painted(w, h, (x, y) => 120 + ((x * 7 + y * 13) % 40)));
      expect(result.seams).toEqual([]);
      expect(result.notes.length).toBeGreaterThan(0);
    }
  });

  it('a joint placed on a panel smaller than two windows', () => {
    const photo = painted(18, 16, (x, y) => 120 + ((x * 7 + y * 13) % 40));
    const [seam] = score(photo, { find: false, placedSeams: [ripAt(8, 18)] }).seams;
    expect(seam!.notes.join()).toMatch(/narrow|too few/);
    expect(seam!.lost.mm).toBeNull();
  });

  it('two placed joints that cross', () => {
    const across = { x1Mm: 90, y1Mm: 0, x2Mm: 90, y2Mm: heightMm };
    const { seams } = score(wood, { find: false, placedSeams: [middle, across] });
    expect(seams).toHaveLength(2);
  });

  it('two placed joints that cross at a slant', () => {
    const slanted = { x1Mm: 0, y1Mm: 20, x2Mm: widthMm, y2Mm: 60 };
    const { seams } = score(wood, { find: false, placedSeams: [middle, slanted] });
    expect(seams).toHaveLength(2);
  });

  it('the same joint placed twice', () => {
    expect(score(wood, { find: false, placedSeams: [middle, middle] }).seams).toHaveLength(2);
  });

  it('a knot across the joint, left out of what is measured', () => {
    const knot: [number, number][] = [
      [47, 25],
      [83, 25],
      [83, 58],
      [47, 58],
    ];
    const whole = score(wood, { find: false, placedSeams: [middle] }).seams[0]!;
    const clear = score(wood, { find: false, placedSeams: [middle], leftOut: [knot] }).seams[0]!;
    expect(whole.windows.some((w) => w.atMm > 47 && w.atMm < 83)).toBe(true);
    expect(clear.windows.some((w) => w.atMm > 47 && w.atMm < 83)).toBe(false);
    expect(clear.windows.length).toBeGreaterThan(5);
  });

  it('everything left out', () => {
    const all: [number, number][] = [
      [-1, -1],
      [999, -1],
      [999, 999],
      [-1, 999],
    ];
    const { seams } = score(wood, { find: false, placedSeams: [middle], leftOut: [all] });
    expect(seams[0]!.notes.length).toBeGreaterThan(0);
  });

  it('glare over half of the panel', () => {
    const image = { ...wood.image, data: wood.image.data.slice() };
    for (let y = 0; y < image.height; y++) {
      const row = 3 * y * image.width;
      image.data.fill(255, row + 1.5 * image.width, row + 3 * image.width);
    }
    const { seams } = score({ ...wood, image }, { find: false, placedSeams: [middle] });
    expect(seams.some((s) => s.found === 'placed')).toBe(true);
  });

  it.each([0, 128, 255])('a picture of nothing but grey %d', (grey) => {
    const photo = painted(80, 60, () => grey);
    const looked = score(photo);
    expect(looked.seams).toEqual([]);
    expect(looked.visibility.v).toBeNull();
    expect(looked.notes.join()).toMatch(/is it wood/i);
    const [seam] = score(photo, { find: false, placedSeams: [ripAt(30, 80)] }).seams;
    expect(seam!.visibility.v!).toBeLessThan(0.5);
    expect(seam!.lost.mm).toBeNull();
    expect(seam!.offset.mm).toBeNull();
    expect(seam!.notes.length).toBeGreaterThan(0);
  });

  it('noise without grain: no joint', () => {
    const random = createRandom(9);
    const result = score(painted(120, 80, () => 128 + Math.round(6 * random.normal())));
    expect(result.seams).toEqual([]);
  });

  it('printed laminate: one small picture of wood over and over', () => {
    const tile = 20 * pxPerMm;
    const { image } = wood;
    const data = image.data.map((_, i) => {
      const p = Math.floor(i / 3);
      const x = (p % image.width) % tile;
      const y = Math.floor(p / image.width) % tile;
      return image.data[3 * (y * image.width + x) + (i % 3)]!;
    });
    const result = score(
      { ...wood, image: { ...image, data } },
      { find: false, placedSeams: [middle] },
    );
    expect(result.seams.length).toBeGreaterThan(0);
  });

  it('even lines all over, as on printed laminate: no joint', () => {
    const lines = { angleDeg: 12, spacingMm: 4, contrast: 0.1, pxPerMm, widthMm, heightMm };
    expect(score(greyPhoto(gratingPlanes(lines))).seams).toEqual([]);
  });

  it('an eye as near or as far as the contract allows', () => {
    for (const distanceMm of [100, 20_000]) {
      score(wood, { find: false, placedSeams: [middle], distanceMm });
    }
  });
});

describe('score refuses', () => {
  it.each([
    ['outside the panel', ripAt(120, widthMm)],
    ['along its edge', ripAt(0.5, widthMm)],
    ['of no length', { x1Mm: 20, y1Mm: 20, x2Mm: 20, y2Mm: 20 }],
  ])('a joint placed %s', (_, line) => {
    expect(() => score(wood, { find: false, placedSeams: [line] })).toThrow(
      expect.objectContaining({ name: 'SeamgrainError', code: 'badPanel' }),
    );
  });
});
