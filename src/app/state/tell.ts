import { SeamgrainError } from '../../core/errors.js';
import { JobCancelled } from '../../job/webWorkerClient.js';
import { useWorkbench } from './workbench.js';

/** Says something that needs no answer. */
export function tell(text: string, hint = ''): void {
  useWorkbench.setState({ notice: { kind: 'word', text, hint } });
}

/** Says what went wrong, in the maker's words; a cancel is no failure and is passed over. */
export function tellProblem(thrown: unknown, doing: string): void {
  if (thrown instanceof JobCancelled) return;
  if (!(thrown instanceof SeamgrainError)) console.error(thrown);
  const text =
    thrown instanceof SeamgrainError && thrown.code !== 'internal'
      ? thrown.message
      : `${doing} did not work. Nothing you did is lost.`;
  const hint = thrown instanceof SeamgrainError ? thrown.hint : '';
  useWorkbench.setState({ notice: { kind: 'problem', text, hint } });
}

/** Takes the words away. */
export function closeNotice(): void {
  useWorkbench.setState({ notice: null });
}
