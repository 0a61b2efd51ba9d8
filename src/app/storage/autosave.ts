import { SeamgrainError } from '../../core/errors.js';
import { fileOf } from '../images/shelf.js';
import { tellProblem } from '../state/tell.js';
import { useWorkbench } from '../state/workbench.js';
import { keepProject } from './keepProject.js';
import type { KeptPicture } from './openDatabase.js';

const pauseMs = 200;
let timer: ReturnType<typeof setTimeout> | null = null;
let lastKept: unknown = null;
let lastScores: unknown = null;
let under: Promise<void> = Promise.resolve();
const keptPictures = new Set<string>();

/** Says that a picture already lies in the database. */
export function pictureIsKept(imageId: string): void {
  keptPictures.add(imageId);
}

/** Says that the project on the page is the one in the database, so that nothing is due. */
export function projectIsKept(): void {
  const { history, scores } = useWorkbench.getState();
  lastKept = history?.now ?? null;
  lastScores = scores;
}

/** Keeps the project now; safe to call at any time, and again while a save is under way. */
export function saveNow(): Promise<void> {
  if (timer) clearTimeout(timer);
  timer = null;
  under = under.then(save);
  return under;
}

async function save(): Promise<void> {
  const { history, scores, saving } = useWorkbench.getState();
  const project = history?.now;
  if (!project || saving === 'elsewhere') return;
  if (project === lastKept && scores === lastScores) return;
  useWorkbench.setState({ saving: 'saving' });
  try {
    const fresh: KeptPicture[] = [];
    for (const { imageId } of project.photos) {
      if (!keptPictures.has(imageId)) fresh.push(await fileOf(imageId));
    }
    await keepProject(project, scores, new Date().toISOString(), fresh);
    for (const { id } of fresh) keptPictures.add(id);
    lastKept = project;
    lastScores = scores;
    useWorkbench.setState(({ saving: now }) => (now === 'elsewhere' ? {} : { saving: 'kept' }));
  } catch (thrown) {
    useWorkbench.setState({ saving: 'problem' });
    tellProblem(inWords(thrown), 'Saving');
  }
}

function inWords(thrown: unknown): unknown {
  if (!(thrown instanceof DOMException) || thrown.name !== 'QuotaExceededError') return thrown;
  return new SeamgrainError(
    'cannotDo',
    'There is no room left on this device, so the last change is not kept yet.',
    'It is still on this page: save the project as a file, or remove an old project, then go on.',
  );
}

/** Keeps every change a moment after it was made, and at once when the page is put away. */
export function startAutosave(): () => void {
  const stop = useWorkbench.subscribe(({ history, scores }) => {
    if (!history || (history.now === lastKept && scores === lastScores)) return;
    if (timer) clearTimeout(timer);
    timer = setTimeout(saveNow, pauseMs);
  });
  const putAway = () => {
    if (document.visibilityState === 'hidden') saveNow();
  };
  document.addEventListener('visibilitychange', putAway);
  return () => {
    stop();
    document.removeEventListener('visibilitychange', putAway);
  };
}
