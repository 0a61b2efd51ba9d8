import type { Sample } from '../samples.js';
import { changeProject } from '../state/workbench.js';
import { addPhotos, takeInPhoto } from './bringPhotos.js';
import { goTo, startProject } from './openProject.js';
import { pinPanel } from './panelChanges.js';

/** Opens a shipped sample as a project of its own, pinned and ready. */
export async function openSample({ file, title, scale, page, settings }: Sample): Promise<void> {
  const answer = await fetch(`samples/${file}`);
  const blob = await answer.blob();
  const photo = await takeInPhoto(new File([blob], `${title}.jpg`, { type: blob.type }));
  await startProject(title);
  addPhotos([photo]);
  pinPanel(photo.id, scale);
  if (settings) {
    changeProject('Set the bench', (draft) => {
      Object.assign(draft.settings, settings);
    });
  }
  goTo(page);
}
