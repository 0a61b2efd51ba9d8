import { decodedPhoto, shelveFile } from '../images/shelf.js';
import { createPhoto } from '../state/createProject.js';
import type { Photo } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import { changeProject, currentProject } from '../state/workbench.js';
import { goTo, startProject } from './openProject.js';
import { openProjectFile } from './projectFiles.js';

/** The file's name without folder and ending, as the photo's first name. */
const plainName = (name: string) => name.replace(/^.*[\\/]/, '').replace(/\.[^.]+$/, '') || 'Photo';

/** Shelves one photograph and describes it; it is decoded once to see that it can be. */
export async function takeInPhoto(file: File): Promise<Photo> {
  const imageId = crypto.randomUUID();
  shelveFile({ id: imageId, name: file.name, type: file.type, bytes: await file.arrayBuffer() });
  const { image } = await decodedPhoto(imageId);
  return createPhoto(crypto.randomUUID(), plainName(file.name), imageId, image.width, image.height);
}

/** Brings photographs in: into the project on the page, or into a new one named after the first. */
export async function bringPhotos(files: readonly File[]): Promise<void> {
  const projectFile = files.find(({ name }) => /\.seamgrain(\.json)?$/.test(name));
  if (projectFile) return openProjectFile(projectFile);
  const photos: Photo[] = [];
  for (const file of files) {
    try {
      photos.push(await takeInPhoto(file));
    } catch (thrown) {
      tellProblem(thrown, `Reading ${file.name}`);
    }
  }
  if (photos.length === 0) return;
  if (!currentProject()) await startProject(photos[0]!.name);
  addPhotos(photos);
  goTo('pin');
}

/** Adds photos that are on the shelf, and shows the first of them. */
export function addPhotos(photos: readonly Photo[]): void {
  changeProject(photos.length === 1 ? 'Add a photo' : 'Add photos', (draft) => {
    draft.photos.push(...(structuredClone(photos) as typeof draft.photos));
    draft.shownPhotoId = photos[0]!.id;
  });
}
