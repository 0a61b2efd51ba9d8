import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodePhoto } from '../../src/cli/io/decodePhoto.js';
import { readPhoto } from '../../src/cli/io/readPhoto.js';

const width = 64;
const height = 48;

/** Four flat quarters, so that turning and colour can be read off: red, green, blue, grey. */
const quarters = [
  [200, 60, 50],
  [60, 170, 70],
  [60, 80, 190],
  [128, 128, 128],
];
const pixels = Buffer.alloc(3 * width * height);
for (let y = 0; y < height; y++) {
  for (let x = 0; x < width; x++) {
    const colour = quarters[(y < height / 2 ? 0 : 2) + (x < width / 2 ? 0 : 1)];
    pixels.set(colour, 3 * (y * width + x));
  }
}
const picture = () => sharp(pixels, { raw: { width, height, channels: 3 } });

type Decoded = Awaited<ReturnType<typeof decodePhoto>>;
const at = ({ image }: Decoded, x: number, y: number) => {
  const start = 3 * (y * image.width + x);
  return [...image.data.subarray(start, start + 3)];
};

function expectQuarters(decoded: Decoded, tolerance: number) {
  const { width: w, height: h } = decoded.image;
  const places = [
    [w / 4, h / 4],
    [(3 * w) / 4, h / 4],
    [w / 4, (3 * h) / 4],
    [(3 * w) / 4, (3 * h) / 4],
  ];
  places.forEach(([x, y], i) => {
    at(decoded, Math.floor(x), Math.floor(y)).forEach((level, c) => {
      expect(Math.abs(level - quarters[i][c]), `quarter ${i} channel ${c}`).toBeLessThanOrEqual(
        tolerance,
      );
    });
  });
}

describe('decodePhoto', () => {
  const formats: [string, () => Promise<Buffer>, number][] = [
    ['PNG', () => picture().png().toBuffer(), 0],
    ['16-bit PNG', () => picture().toColourspace('rgb16').png().toBuffer(), 0],
    ['palette PNG', () => picture().png({ palette: true }).toBuffer(), 3],
    ['JPEG', () => picture().jpeg({ quality: 95 }).toBuffer(), 3],
    ['WebP', () => picture().webp({ lossless: true }).toBuffer(), 0],
    ['TIFF', () => picture().tiff({ compression: 'lzw' }).toBuffer(), 0],
    ['AVIF', () => picture().avif({ lossless: true }).toBuffer(), 1],
    ['opaque alpha', () => picture().ensureAlpha(1).png().toBuffer(), 0],
  ];
  it.each(formats)('reads %s', async (_, encode, tolerance) => {
    const decoded = await decodePhoto(await encode(), 'photo');
    expect(decoded.image).toMatchObject({ width, height });
    expect(decoded.image.data).toHaveLength(3 * width * height);
    expect(decoded.notes).toEqual([]);
    expectQuarters(decoded, tolerance);
  });

  // EXIF 2.3, tag 0x0112: how the stored picture must be turned to stand upright.
  const turns: [number, (stored: Sharp) => Sharp][] = [
    [1, (s) => s],
    [2, (s) => s.flop()],
    [3, (s) => s.rotate(180)],
    [4, (s) => s.flip()],
    [6, (s) => s.rotate(270)],
    [8, (s) => s.rotate(90)],
  ];
  it.each(turns)('stands a photo with EXIF orientation %i upright', async (orientation, store) => {
    const stored = await store(picture()).png().toBuffer();
    const marked = await sharp(stored)
      .withMetadata({ orientation })
      .jpeg({ quality: 95 })
      .toBuffer();
    const decoded = await decodePhoto(marked, 'photo');
    expect(decoded.image).toMatchObject({ width, height });
    expectQuarters(decoded, 4);
  });

  it('converts a Display P3 photo to sRGB', async () => {
    const p3 = await picture().withIccProfile('p3').png().toBuffer();
    // The same file with its profile thrown away holds other numbers: those of P3 (at least 5 off).
    const raw = await sharp(p3, { ignoreIcc: true }).raw().toBuffer();
    expect(Math.abs(raw[0] - quarters[0][0])).toBeGreaterThan(5);
    expectQuarters(await decodePhoto(p3, 'photo'), 2);
  });

  it('takes printing inks with a warning', async () => {
    const inks = await picture().toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer();
    const decoded = await decodePhoto(inks, 'photo');
    expect(decoded.notes.join()).toMatch(/CMYK/);
    expectQuarters(decoded, 60);
  });

  it('takes black and white with a warning', async () => {
    const grey = await picture().toColourspace('b-w').png().toBuffer();
    const decoded = await decodePhoto(grey, 'photo');
    expect(decoded.notes.join()).toMatch(/black and white/);
    const [red, green, blue] = at(decoded, 3, 3);
    expect([green, blue]).toEqual([red, red]);
  });

  it('lays transparent parts on grey and says so', async () => {
    const clear = await sharp({ create: { width, height, channels: 4, background: '#ff000000' } })
      .png()
      .toBuffer();
    const decoded = await decodePhoto(clear, 'photo');
    expect(at(decoded, 5, 5)).toEqual([128, 128, 128]);
    expect(decoded.notes.join()).toMatch(/grey/);
  });

  it('takes the first of several TIFF pages with a warning', async () => {
    const second = await picture().negate().png().toBuffer();
    const pages = await sharp([await picture().png().toBuffer(), second], {
      join: { animated: true },
    })
      .tiff()
      .toBuffer();
    const decoded = await decodePhoto(pages, 'photo');
    expect(decoded.notes.join()).toMatch(/2 pages/);
    expectQuarters(decoded, 3);
  });

  const refused: [string, RegExp, () => Promise<Uint8Array>][] = [
    ['nothing', /empty/, async () => new Uint8Array()],
    ['text', /not a photo/, async () => Buffer.from('Dear saw, '.repeat(50))],
    [
      'a drawing',
      /SVG/,
      async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
    ],
    ['a GIF', /GIF/, () => picture().gif().toBuffer()],
    ['half a JPEG', /cut short/, async () => half(await noisy().jpeg().toBuffer())],
    ['half a PNG', /cut short/, async () => half(await noisy().png().toBuffer())],
    ['half a TIFF', /damaged/, async () => half(await noisy().tiff().toBuffer())],
    ['half a WebP', /damaged|cut short/, async () => half(await noisy().webp().toBuffer())],
    ['half an AVIF', /damaged|cut short/, async () => half(await noisy().avif().toBuffer())],
    ['an animation', /animated.*2 frames/, animation],
  ];
  it.each(refused)('refuses %s', async (_, message, make) => {
    const failure = decodePhoto(await make(), 'odd.jpg');
    await expect(failure).rejects.toMatchObject({ name: 'SeamgrainError', code: 'badPhoto' });
    await expect(failure).rejects.toThrow(message);
    await expect(failure).rejects.toThrow(/odd\.jpg/);
  });

  it('refuses 300 megapixels before decoding them', async () => {
    const blank = { width: 20_000, height: 15_000, channels: 3, background: '#888' } as const;
    const huge = await sharp({ create: blank, limitInputPixels: false })
      .png({ compressionLevel: 1 })
      .toBuffer();
    const start = performance.now();
    await expect(decodePhoto(huge, 'huge.png')).rejects.toThrow(/300 megapixels; at most 150/);
    expect(performance.now() - start).toBeLessThan(1000);
  });
});

function noisy() {
  const noise = Buffer.from(
    Array.from({ length: 3 * 200 * 200 }, (_, i) => Math.imul(i, 2654435761) >>> 24),
  );
  return sharp(noise, { raw: { width: 200, height: 200, channels: 3 } });
}

function half(bytes: Buffer): Buffer {
  return bytes.subarray(0, bytes.length >> 1);
}

async function animation(): Promise<Buffer> {
  const frames = [await picture().png().toBuffer(), await picture().negate().png().toBuffer()];
  return sharp(frames, { join: { animated: true } })
    .webp()
    .toBuffer();
}

describe('readPhoto', () => {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'seamgrain-photo-'));
  });
  afterAll(() => rm(folder, { recursive: true }));

  it('reads a file whatever its name says', async () => {
    const path = join(folder, 'panel.jpg');
    await writeFile(path, await picture().png().toBuffer());
    expectQuarters(await readPhoto(path), 0);
  });

  it('says when there is no such file, or it is a folder', async () => {
    await expect(readPhoto(join(folder, 'none.jpg'))).rejects.toThrow(/not found/);
    await expect(readPhoto(folder)).rejects.toThrow(/is a folder/);
  });
});
