import { SeamgrainError } from '../../core/errors.js';
import { JobCancelled } from '../../job/webWorkerClient.js';
import { type Notice, useWorkbench } from './workbench.js';

const most = 3;
let nextId = 1;

function show(kind: Notice['kind'], text: string, hint: string): void {
  useWorkbench.setState(({ notices }) => {
    const others = notices.filter((notice) => notice.text !== text);
    return { notices: [...others, { id: nextId++, kind, text, hint }].slice(-most) };
  });
}

/** Says something that needs no answer. */
export function tell(text: string, hint = ''): void {
  show('word', text, hint);
}

/** Says what went wrong, in the maker's words; a cancel is no failure and is passed over. */
export function tellProblem(thrown: unknown, doing: string): void {
  if (thrown instanceof JobCancelled) return;
  const known = thrown instanceof SeamgrainError && thrown.code !== 'internal';
  if (!known) console.warn(thrown);
  if (known) show('problem', thrown.message, thrown.hint);
  else show('problem', `${doing} did not work. Nothing you did is lost.`, '');
}

/** Takes the words away. */
export function closeNotice(id: number): void {
  useWorkbench.setState(({ notices }) => ({
    notices: notices.filter((notice) => notice.id !== id),
  }));
}
