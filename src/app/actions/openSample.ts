import type { Sample } from '../samples.js';
import { changeProject } from '../state/workbench.js';
import { addPhotos, takeInPhoto } from './bringPhotos.js';
import { goTo, startProject } from './openProject.js';

/** Opens a shipped sample as a project of its own, pinned and ready. */
export async function openSample({ photos, title, page, settings }: Sample): Promise<void> {
  const taken = await Promise.all(
    photos.map(async ({ file, scale }) => {
      const blob = await (await fetch(`samples/${file}`)).blob();
      const photo = await takeInPhoto(new File([blob], file, { type: blob.type }));
      return { ...photo, scale };
    }),
  );
  await startProject(title);
  addPhotos(taken);
  if (settings) {
    changeProject('Set the bench', (draft) => {
      Object.assign(draft.settings, settings);
    });
  }
  goTo(page);
}
