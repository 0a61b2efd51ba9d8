import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createPhoto, createProject } from '../../src/app/state/createProject.js';
import type { Project } from '../../src/app/state/project.js';
import { readProjectFile, writeProjectFile } from '../../src/app/storage/projectFile.js';
import { restoreProject } from '../../src/app/storage/restoreProject.js';

const photo = {
  ...createPhoto('photo-1', 'rails', 'image-1', 4000, 3000),
  scale: {
    kind: 'size' as const,
    widthMm: 900,
    heightMm: 400,
    cornersPx: [
      { x: 1, y: 2 },
      { x: 3900, y: 10 },
      { x: 3950, y: 2900 },
      { x: 20, y: 2950 },
    ] as const,
  },
  seams: [{ id: 's', line: { x1Mm: 0, y1Mm: 100, x2Mm: 900, y2Mm: 101 } }],
  leftOut: [{ id: 'k', kind: 'knot' as const, xMm: 30, yMm: 40, radiusXMm: 9, radiusYMm: 7 }],
};
const project: Project = {
  ...createProject('project-1', 'Chest, upper panel', '2030-01-02T03:04:05.000Z'),
  photos: [photo],
  shownPhotoId: 'photo-1',
};
const picture = (bytes: ArrayBuffer) => ({
  id: 'image-1',
  name: 'rails.jpg',
  type: 'image/jpeg',
  bytes,
});
const text = () => writeProjectFile(project, [picture(new Uint8Array([1, 2, 255]).buffer)]).text();

describe('the project file', () => {
  it('gives back the project and each photo byte for byte', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 200_000 }), async (bytes) => {
        const file = writeProjectFile(project, [picture(new Uint8Array(bytes).buffer)]);
        const read = readProjectFile(await file.text());
        expect(read.project).toEqual(project);
        expect(new Uint8Array(read.pictures[0]!.bytes)).toEqual(new Uint8Array(bytes));
      }),
      { numRuns: 20 },
    );
  });

  it('is refused as a whole when cut short anywhere', async () => {
    const whole = (await text()).trimEnd();
    for (let end = 0; end < whole.length; end += 97) {
      expect(() => readProjectFile(whole.slice(0, end))).toThrow(/damaged or cut short/);
    }
  });

  it('names the damaged field', async () => {
    const file = JSON.parse(await text());
    file.project.photos[0].scale.widthMm = -4;
    expect(() => readProjectFile(JSON.stringify(file))).toThrow(/photos\.0\.scale\.widthMm/);
  });

  it('says when a photo is missing or its bytes are damaged', async () => {
    const file = JSON.parse(await text());
    const without = { ...file, pictures: [] };
    expect(() => readProjectFile(JSON.stringify(without))).toThrow(/lacks the photo 'rails'/);
    file.pictures[0].base64 = '%%%';
    expect(() => readProjectFile(JSON.stringify(file))).toThrow(/photo in the file is damaged/);
  });

  it('refuses what is no project and what is from the future', async () => {
    expect(() => readProjectFile('{"a":1}')).toThrow(/no Seamgrain project/);
    const file = { ...JSON.parse(await text()), version: 2 };
    expect(() => readProjectFile(JSON.stringify(file))).toThrow(/newer Seamgrain/);
  });
});

describe('restoring', () => {
  it('drops fields that it does not know', () => {
    expect(restoreProject(1, { ...project, surprise: true })).toEqual(project);
  });

  it('opens a project from before ends and drawn boards were kept', () => {
    const { imaginedBoards: _, photos, ...rest } = project;
    const old = photos.map(({ endId: _e, endSide: _s, ...each }) => each);
    expect(restoreProject(1, { ...rest, photos: old })).toEqual(project);
  });
});
