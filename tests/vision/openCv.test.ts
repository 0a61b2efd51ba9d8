import { describe, expect, it } from 'vitest';
import type { CornersPx } from '../../src/core/image/photoScale.js';
import { loadOpenCv } from '../../src/vision/node/loadOpenCv.js';
import { opencvVitePlugin } from '../../src/vision/opencvVitePlugin.js';
import { rectify } from '../../src/vision/rectify.js';
import { warpToPanel } from '../../src/vision/warpToPanel.js';
import { wrapOpenCvSource } from '../../src/vision/wrapOpenCvSource.js';
import { countingOpenCv } from '../support/countingOpenCv.js';

const photo = { width: 64, height: 64, data: new Uint8Array(3 * 64 * 64) };
const corners: CornersPx = [
  { x: 4, y: 5 },
  { x: 60, y: 6 },
  { x: 59, y: 60 },
  { x: 5, y: 59 },
];
const raster = { width: 50, height: 50, exactWidth: 50, exactHeight: 50 };

describe('OpenCV in Node', () => {
  it('is loaded once and leaves no process-wide handlers behind', async () => {
    const events = ['uncaughtException', 'unhandledRejection'];
    const before = events.map((event) => process.listenerCount(event));
    const [first, second] = await Promise.all([loadOpenCv(), loadOpenCv()]);
    expect(second.cv).toBe(first.cv);
    expect(events.map((event) => process.listenerCount(event))).toEqual(before);
  });

  it('can be awaited', async () => {
    const { cv } = await loadOpenCv();
    expect('then' in cv).toBe(false);
  });

  it('gets every matrix back', async () => {
    const counting = countingOpenCv((await loadOpenCv()).cv);
    const vision = async () => counting;
    const scale = { kind: 'size', widthMm: 20, heightMm: 20, cornersPx: corners } as const;
    await rectify(photo, scale, { vision });
    expect(counting.made()).toBeGreaterThan(0);
    expect(counting.alive()).toBe(0);
  });

  it('gets every matrix back after a failure, told in words', async () => {
    const counting = countingOpenCv((await loadOpenCv()).cv);
    const impossible = { ...raster, width: 40_000, height: 40_000 };
    expect(() => warpToPanel(counting.cv, photo, corners, impossible)).toThrow(/too large|OpenCV/);
    expect(counting.made()).toBeGreaterThan(0);
    expect(counting.alive()).toBe(0);
    expect(warpToPanel(counting.cv, photo, corners, raster).data).toHaveLength(3 * 50 * 50);
  });
});

describe('the wrapped source', () => {
  it('refuses another version of opencv.js', () => {
    expect(() => wrapOpenCvSource('var cv = {};')).toThrow(/4\.3\.0-10/);
  });

  it('is handed to Vite only for opencv.js', () => {
    const { transform } = opencvVitePlugin();
    expect(transform('let a;', '/x/other.js')).toBeNull();
    const wrapped = transform('let Module = {};', '/x/opencv-wasm/opencv.js?factory');
    expect(wrapped?.code).toMatch(/^export default function/);
  });
});
