import { describe, expect, it } from 'vitest';
import type { CornersPx, PhotoScale } from '../../src/core/image/photoScale.js';
import { loadOpenCv } from '../../src/vision/node/loadOpenCv.js';
import { rectify } from '../../src/vision/rectify.js';

const photo = { width: 400, height: 300, data: new Uint8Array(3 * 400 * 300) };

function corners(...numbers: number[]): CornersPx {
  const [a, b, c, d, e, f, g, h] = numbers;
  return [
    { x: a, y: b },
    { x: c, y: d },
    { x: e, y: f },
    { x: g, y: h },
  ];
}

const sized = (cornersPx: CornersPx | null, widthMm = 80, heightMm = 60): PhotoScale => ({
  kind: 'size',
  widthMm,
  heightMm,
  cornersPx,
});

const cases: readonly [string, PhotoScale, string, RegExp][] = [
  ['corners that cross', sized(corners(10, 10, 390, 290, 390, 10, 10, 290)), 'badPanel', /cross/],
  [
    'corners the other way round',
    sized(corners(10, 10, 10, 290, 390, 290, 390, 10)),
    'badPanel',
    /anticlockwise/,
  ],
  [
    'a corner outside',
    sized(corners(10, 10, 450, 10, 390, 290, 10, 290)),
    'badPanel',
    /outside the photo/,
  ],
  [
    'a dented outline',
    sized(corners(10, 10, 390, 10, 150, 120, 10, 290)),
    'badPanel',
    /dent|in line/,
  ],
  [
    'three corners in line',
    sized(corners(10, 10, 200, 12, 390, 10, 200, 290)),
    'badPanel',
    /in line|dent/,
  ],
  [
    'two corners in one place',
    sized(corners(10, 10, 390, 10, 390, 290, 385, 285)),
    'badPanel',
    /within/,
  ],
  [
    'no rectangle of this size',
    sized(corners(10, 130, 390, 130, 390, 170, 10, 170), 80, 80),
    'badPanel',
    /does not fit its size/,
  ],
  ['a length of zero', sized(null, 0, 60), 'badPanel', /more than zero/],
  ['a width that is no number', sized(null, 80, Number.NaN), 'badPanel', /more than zero/],
  ['far too few pixels a millimetre', sized(null, 4000, 3000), 'badPhoto', /less than a pixel/],
  ['px/mm of nought', { kind: 'pxPerMm', pxPerMm: 0 }, 'badPanel', /more than zero/],
  ['an absurd px/mm', { kind: 'pxPerMm', pxPerMm: 500 }, 'badPanel', /only 0\.80 x 0\.60 mm/],
  [
    'a known distance outside',
    { kind: 'known', fromPx: { x: 10, y: 10 }, toPx: { x: 500, y: 10 }, lengthMm: 90 },
    'badPanel',
    /outside the photo/,
  ],
  [
    'a known distance too short',
    { kind: 'known', fromPx: { x: 10, y: 10 }, toPx: { x: 15, y: 10 }, lengthMm: 90 },
    'badPanel',
    /too short/,
  ],
];

describe('rectify refuses', () => {
  it.each(cases)('%s', async (_, scale, code, message) => {
    const failure = rectify(photo, scale, { vision: loadOpenCv });
    await expect(failure).rejects.toMatchObject({ name: 'SeamgrainError', code });
    await expect(failure).rejects.toThrow(message);
  });

  it('a photo one pixel wide', async () => {
    const thin = { width: 1, height: 500, data: new Uint8Array(1500) };
    const failure = rectify(thin, { kind: 'pxPerMm', pxPerMm: 1 }, { vision: loadOpenCv });
    await expect(failure).rejects.toMatchObject({ code: 'badPhoto' });
    await expect(failure).rejects.toThrow(/1 x 500 px/);
  });
});
