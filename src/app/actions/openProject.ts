import { createProject } from '../state/createProject.js';
import type { Project } from '../state/project.js';
import { hashOfRoute, type JobPage } from '../state/route.js';
import { tell, tellProblem } from '../state/tell.js';
import { showProject, useWorkbench } from '../state/workbench.js';
import { pictureIsKept, projectIsKept, saveNow } from '../storage/autosave.js';
import { openKeptProject } from '../storage/openKeptProject.js';
import { lockProject, type ProjectLock } from '../storage/projectLock.js';

let lock: ProjectLock | null = null;

/** Goes to a page by the address, so that the browser's Back works. */
export function goTo(page: JobPage | 'start'): void {
  const project = useWorkbench.getState().history?.now;
  location.hash =
    page === 'start' || !project
      ? hashOfRoute({ page: 'start' })
      : hashOfRoute({ page, projectId: project.id });
}

/** Saves what is on the page, lets go of it and leaves it. */
export async function leaveProject(): Promise<void> {
  if (!useWorkbench.getState().history) return;
  await saveNow();
  lock?.release();
  lock = null;
  useWorkbench.setState({ history: null, chosenSeamId: null, scores: {}, grains: {} });
}

async function giveUpHold(): Promise<void> {
  await saveNow();
  useWorkbench.setState({ saving: 'elsewhere' });
}

/** Takes hold of the project on the page; when another tab has it, this one only looks. */
async function takeHold(id: string): Promise<void> {
  lock = await lockProject(id, giveUpHold);
  if (!lock.held) useWorkbench.setState({ saving: 'elsewhere' });
}

/** Starts a new project and takes hold of it. */
export async function startProject(
  name: string,
  id: string = crypto.randomUUID(),
): Promise<Project> {
  await leaveProject();
  const project = createProject(id, name, new Date().toISOString());
  showProject(project);
  await takeHold(project.id);
  return project;
}

/** Puts a project that came from a file on the page. */
export async function adoptProject(project: Project): Promise<void> {
  await leaveProject();
  showProject(project);
  await takeHold(project.id);
  await saveNow();
}

/** Opens a kept project. */
export async function openProject(id: string): Promise<void> {
  if (useWorkbench.getState().history?.now.id === id) return;
  await leaveProject();
  try {
    const { project, scores } = await openKeptProject(id);
    showProject(project, scores);
    for (const { imageId } of project.photos) pictureIsKept(imageId);
    projectIsKept();
    await takeHold(id);
  } catch (thrown) {
    tellProblem(thrown, 'Opening the project');
    location.hash = hashOfRoute({ page: 'start' });
  }
}

/** Takes the project over from the other tab and reads what that tab kept last. */
export async function workHere(): Promise<void> {
  const id = useWorkbench.getState().history?.now.id;
  if (!id || !lock) return;
  await lock.takeOver();
  const { project, scores } = await openKeptProject(id);
  showProject(project, scores);
  projectIsKept();
  tell('The project is now worked on in this tab.');
}
