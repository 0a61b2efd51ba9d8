import type { Project } from '../state/project.js';
import type { Answer } from '../state/workbench.js';
import { type Database, type KeptPicture, openDatabase } from './openDatabase.js';

/**
 * Keeps a project, and the photos that are new in it, in one transaction: either all of it is
 * there afterwards or the last good save is.
 * @throws DOMException QuotaExceededError when the device has no room
 */
export async function keepProject(
  project: Project,
  scores: Readonly<Record<string, Answer<unknown>>>,
  savedAt: string,
  newPictures: readonly KeptPicture[] = [],
): Promise<void> {
  const database = await openDatabase();
  const work = database.transaction(['projects', 'pictures'], 'readwrite', {
    durability: 'strict',
  });
  const writes: Promise<unknown>[] = newPictures.map((picture) =>
    work.objectStore('pictures').put(picture),
  );
  writes.push(
    work.objectStore('projects').put({ id: project.id, version: 1, savedAt, project, scores }),
  );
  await Promise.all([...writes, work.done]);
}

/** Forgets a project and the photos that no other project uses. */
export async function forgetProject(id: string): Promise<void> {
  const database = await openDatabase();
  const work = database.transaction(['projects', 'pictures'], 'readwrite');
  await work.objectStore('projects').delete(id);
  const used = new Set(
    (await work.objectStore('projects').getAll()).flatMap(({ project }) => imageIds(project)),
  );
  const pictures = work.objectStore('pictures');
  for (const key of await pictures.getAllKeys()) {
    if (!used.has(key)) await pictures.delete(key);
  }
  await work.done;
}

function imageIds(project: unknown): readonly string[] {
  const photos = (project as { photos?: readonly { imageId?: unknown }[] } | null)?.photos ?? [];
  return photos.map(({ imageId }) => String(imageId));
}

/** The bytes of one kept photo; undefined when it is not there. */
export async function readPicture(id: string): Promise<KeptPicture | undefined> {
  return (await openDatabase()).get('pictures', id);
}

/** Everything kept, newest first, as it lies there. */
export async function listProjects(database?: Database) {
  const all = await (database ?? (await openDatabase())).getAll('projects');
  return all.sort((a, b) => b.savedAt.localeCompare(a.savedAt));
}
