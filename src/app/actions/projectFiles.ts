import { fileOf, shelveFile } from '../images/shelf.js';
import { tell, tellProblem } from '../state/tell.js';
import { currentProject } from '../state/workbench.js';
import { listProjects } from '../storage/keepProject.js';
import { readProjectFile, writeProjectFile } from '../storage/projectFile.js';
import { adoptProject, goTo } from './openProject.js';
import { saveToDisk } from './saveToDisk.js';

/** Saves the project with its photos as one file. */
export async function saveProjectFile(): Promise<void> {
  const project = currentProject();
  if (!project) return;
  try {
    const pictures = await Promise.all(project.photos.map(({ imageId }) => fileOf(imageId)));
    saveToDisk(writeProjectFile(project, pictures), `${project.name || 'project'}.seamgrain`);
  } catch (thrown) {
    tellProblem(thrown, 'Saving the file');
  }
}

/**
 * Opens a project file. A project that is already kept here is not overwritten:
 * the file's is opened as a copy beside it.
 */
export async function openProjectFile(file: File): Promise<void> {
  try {
    const { project, pictures } = readProjectFile(await file.text());
    for (const picture of pictures) shelveFile(picture);
    const known = (await listProjects()).some(({ id }) => id === project.id);
    const copy = { ...project, id: crypto.randomUUID(), name: `${project.name} (copy)` };
    await adoptProject(known ? copy : project);
    if (known) tell('A project of that name is kept here already; this one was opened as a copy.');
    goTo(project.photos.some(({ scale }) => scale) ? 'joints' : 'pin');
  } catch (thrown) {
    tellProblem(thrown, 'Opening the file');
  }
}
