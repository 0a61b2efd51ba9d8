import type { Sample } from '../samples.js';
import { hashOfRoute } from '../state/route.js';
import { changeProject } from '../state/workbench.js';
import { listProjects } from '../storage/keepProject.js';
import { addPhotos, takeInPhoto } from './bringPhotos.js';
import { goTo, startProject } from './openProject.js';

/** Opens a shipped sample as a project of its own, pinned and ready; as it was left, when it is kept. */
export async function openSample({ id, photos, title, page, settings }: Sample): Promise<void> {
  if ((await listProjects()).some((kept) => kept.id === id)) {
    location.hash = hashOfRoute({ page, projectId: id });
    return;
  }
  const taken = await Promise.all(
    photos.map(async ({ file, scale }) => {
      const blob = await (await fetch(`samples/${file}`)).blob();
      const photo = await takeInPhoto(new File([blob], file, { type: blob.type }));
      return { ...photo, scale };
    }),
  );
  await startProject(title, id);
  addPhotos(taken);
  if (settings) {
    changeProject('Set the bench', (draft) => {
      Object.assign(draft.settings, settings);
    });
  }
  goTo(page);
}
