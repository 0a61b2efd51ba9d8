import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { createPhoto, createProject } from '../../src/app/state/createProject.js';
import { forgetProject, keepProject, readPicture } from '../../src/app/storage/keepProject.js';
import { openDatabase } from '../../src/app/storage/openDatabase.js';
import { openKeptProject } from '../../src/app/storage/openKeptProject.js';

const now = '2030-01-02T03:04:05.000Z';
const picture = (id: string) => ({
  id,
  name: `${id}.jpg`,
  type: 'image/jpeg',
  bytes: new Uint8Array([7]).buffer,
});
const projectWith = (id: string, imageId: string) => ({
  ...createProject(id, id, now),
  photos: [createPhoto(`photo of ${id}`, 'photo', imageId, 10, 10)],
});

describe('kept projects', () => {
  it('come back as they were, with their photos', async () => {
    const project = projectWith('one', 'a');
    await keepProject(project, {}, now, [picture('a')]);
    expect((await openKeptProject('one')).project).toEqual(project);
    expect(new Uint8Array((await readPicture('a'))!.bytes)).toEqual(new Uint8Array([7]));
  });

  it('stay at the last good save when a save breaks off in the middle', async () => {
    const good = projectWith('two', 'b');
    await keepProject(good, {}, now, [picture('b')]);
    // A picture that cannot be stored fails after the project's record could have been written.
    const unstorable = { ...picture('c'), bytes: (() => {}) as unknown as ArrayBuffer };
    const changed = { ...good, name: 'half written' };
    await expect(keepProject(changed, {}, now, [unstorable])).rejects.toThrow();
    expect((await openKeptProject('two')).project.name).toBe('two');
    expect(await readPicture('c')).toBeUndefined();
  });

  it('share photos: one goes only with the last project that uses it', async () => {
    await keepProject(projectWith('three', 'd'), {}, now, [picture('d')]);
    await keepProject(projectWith('four', 'd'), {}, now);
    await forgetProject('three');
    expect(await readPicture('d')).toBeDefined();
    await forgetProject('four');
    expect(await readPicture('d')).toBeUndefined();
  });

  it('that are damaged are refused in words, and left alone', async () => {
    const record = { id: 'five', version: 1 as const, savedAt: now, project: 4, scores: {} };
    await (await openDatabase()).put('projects', record);
    await expect(openKeptProject('five')).rejects.toThrow(/damaged/);
    await expect(openKeptProject('nowhere')).rejects.toThrow(/not kept on this device/);
  });
});
