import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/random/createRandom.js';
import { drawPanel } from '../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../src/core/wood/onePiecePanel.js';
import { blurNotes } from '../../src/vision/blurNotes.js';

const pxPerMm = 6;
const woods = (['ring-porous', 'diffuse-porous', 'softwood'] as const).flatMap((setting) =>
  (['flatsawn', 'quartered'] as const).map((cut) => [setting, cut] as const),
);

async function photo(wood: (typeof woods)[number], sigmaPx: number, noise: number) {
  const [setting, cut] = wood;
  const board = { seed: 501, setting, cut };
  const { image } = drawPanel(onePiecePanel({ board, widthMm: 70, heightMm: 60 }), { pxPerMm });
  const { width, height } = image;
  const raw = sharp(image.data, { raw: { width, height, channels: 3 } });
  const data = new Uint8Array(await (sigmaPx ? raw.blur(sigmaPx) : raw).raw().toBuffer());
  const random = createRandom(9);
  for (let i = 0; noise > 0 && i < data.length; i++) data[i] += Math.round(random.normal(0, noise));
  return { width, height, data };
}

describe('blurNotes', () => {
  it.each(woods)('says nothing of a sharp photo of %s %s wood, noisy or not', async (...wood) => {
    expect(blurNotes(await photo(wood, 0, 0), pxPerMm)).toEqual([]);
    expect(blurNotes(await photo(wood, 0, 3), pxPerMm)).toEqual([]);
  });

  it.each(woods)(
    'tells a blur of half a millimetre in %s %s wood, noisy or not',
    async (...wood) => {
      expect(blurNotes(await photo(wood, 3, 0), pxPerMm).join()).toMatch(/blurred/);
      expect(blurNotes(await photo(wood, 3, 2), pxPerMm).join()).toMatch(/blurred/);
    },
  );

  it('says nothing of a plain surface', () => {
    const plain = { width: 90, height: 90, data: new Uint8Array(3 * 90 * 90).fill(128) };
    expect(blurNotes(plain, pxPerMm)).toEqual([]);
  });
});

describe('blurNotes on a JPEG', () => {
  it('is not misled by its blocks of 8 pixels, whatever the size', async () => {
    const board = { seed: 502, setting: 'softwood', cut: 'flatsawn' } as const;
    const spec = onePiecePanel({ board, widthMm: 300, heightMm: 200 });
    const { image } = drawPanel(spec, { pxPerMm });
    for (const width of [700, 1100, 1500, 1800]) {
      const { data, info } = await sharp(
        await sharp(image.data, { raw: { width: image.width, height: image.height, channels: 3 } })
          .extract({ left: 0, top: 0, width, height: 1000 })
          .jpeg({ quality: 85 })
          .toBuffer(),
      )
        .raw()
        .toBuffer({ resolveWithObject: true });
      expect(blurNotes({ width: info.width, height: info.height, data }, pxPerMm)).toEqual([]);
    }
  });
});
