import { describe, expect, it } from 'vitest';
import { grainPanel } from '../../../src/core/pipeline/grainPanel.js';
import { photoNotes } from '../../../src/core/pipeline/photoNotes.js';
import { defaultScoreOptions } from '../../../src/core/pipeline/scoreOptions.js';
import { gratingPlanes, greyPhoto } from '../seam/gratingJoint.js';
import { expectFinite } from './expectFinite.js';

const board = { widthMm: 80, heightMm: 60, pxPerMm: 5, contrast: 0.1 };
const even = { angleDeg: 10, spacingMm: 4 };

describe('grainPanel', () => {
  it.each([
    [12, 4],
    [-35, 3],
    [70, 5],
  ])('reads lines at %d deg, %d mm apart', (angleDeg, spacingMm) => {
    const photo = greyPhoto(gratingPlanes({ ...board, angleDeg, spacingMm }));
    const { cells, panel } = grainPanel(photo);
    expect(panel).toEqual({ widthMm: 80, heightMm: 60, pxPerMm: 5 });
    expect(cells).toHaveLength(48);
    const inner = cells.filter((c) => c.xMm > 20 && c.xMm < 60 && c.yMm > 20 && c.yMm < 40);
    expect(inner.length).toBeGreaterThanOrEqual(8);
    for (const cell of inner) {
      // 8-bit grey steps of 1 % against lines of 10 %.
      expect(Math.abs(cell.angleDeg! - angleDeg)).toBeLessThan(0.3);
      expect(cell.spacingMm! / spacingMm).toBeGreaterThan(0.9);
      expect(cell.spacingMm! / spacingMm).toBeLessThan(1.1);
      expect(cell.coherence).toBeGreaterThan(0.8);
    }
  });

  it('keeps every angle within (-90, 90], lines straight across too', () => {
    const photo = greyPhoto(gratingPlanes({ ...board, angleDeg: 90, spacingMm: 4 }));
    for (const { angleDeg } of grainPanel(photo).cells) {
      expect(angleDeg!).toBeGreaterThan(-90);
      expect(angleDeg!).toBeLessThanOrEqual(90);
    }
  });

  it('calls lines exactly across the panel +90 deg', () => {
    const image = { width: 400, height: 300, data: new Uint8Array(3 * 400 * 300) };
    image.data.forEach((_, i) => {
      image.data[i] =
        120 + Math.round(20 * Math.sin((2 * Math.PI * (Math.floor(i / 3) % 400)) / 20));
    });
    const photo = { image, pxPerMm: 5, widthMm: 80, heightMm: 60, notes: [] };
    for (const { angleDeg } of grainPanel(photo).cells) {
      expect(angleDeg!).toBeGreaterThan(-90);
      expect(angleDeg!).toBeLessThanOrEqual(90);
    }
  });

  it('of a grey wall tells nothing, and says so', () => {
    const result = grainPanel(greyPhoto(gratingPlanes({ ...board, contrast: 0, ...even })));
    expectFinite(result);
    const data = new Uint8Array(3 * 400 * 300).fill(128);
    const image = { width: 400, height: 300, data };
    const wall = grainPanel({ image, pxPerMm: 5, widthMm: 80, heightMm: 60, notes: [] });
    expectFinite(wall);
    expect(wall.cells.every((c) => c.angleDeg === null && c.spacingMm === null)).toBe(true);
    expect(wall.notes.join()).toMatch(/cannot tell/i);
  });

  it('refuses a panel smaller than a cell, and cells of no use', () => {
    const photo = greyPhoto(gratingPlanes({ ...board, widthMm: 8, heightMm: 8, ...even }));
    expect(() => grainPanel(photo)).toThrow(expect.objectContaining({ code: 'badPanel' }));
    for (const cellMm of [0, -3, Number.NaN, 1000]) {
      expect(() => grainPanel(photo, { cellMm })).toThrow(
        expect.objectContaining({ code: 'wrongUsage' }),
      );
    }
    expectFinite(grainPanel(photo, { cellMm: 4 }));
  });
});

describe('photoNotes', () => {
  it('asks whether a picture without lines is wood at all', () => {
    const grey = gratingPlanes({ ...board, contrast: 0, ...even });
    expect(photoNotes(grey, 1, defaultScoreOptions).join()).toMatch(/wood/);
    const wood = gratingPlanes({ ...board, ...even });
    expect(photoNotes(wood, 1, defaultScoreOptions)).toEqual([]);
  });

  it('says when no joint was found, unless none was looked for', () => {
    const wood = gratingPlanes({ ...board, ...even });
    expect(photoNotes(wood, 0, defaultScoreOptions).join()).toMatch(/no joint found/i);
    expect(photoNotes(wood, 0, { ...defaultScoreOptions, find: false })).toEqual([]);
  });
});
