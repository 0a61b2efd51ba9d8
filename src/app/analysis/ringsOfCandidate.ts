import type { RunningJob } from '../../job/webWorkerClient.js';
import { candidateKey, candidatePanel } from '../images/candidatePanel.js';
import { panelKey, panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import type { CandidateBoard } from './candidateBoards.js';
import type { CandidateRings } from './candidateReading.js';
import { knownCandidates as known } from './knownCandidates.js';
import { questionOf } from './useAnswer.js';

/** The rings as far as they are read; null while something is still to be read. */
export function ringsOfCandidate(board: CandidateBoard): CandidateRings | null {
  const end = board.end ? known.ends.get(endKey(board.end)) : null;
  if (end === undefined) return null;
  if (board.imagined || end?.cut) return { end, face: null };
  const face = known.faceRings.get(candidateKey(board));
  return face ? { end, face } : null;
}

/** What the rings depend on. */
export const ringsKeyOf = (board: CandidateBoard): string =>
  JSON.stringify([candidateKey(board), board.end && endKey(board.end)]);

/** Reads the end, with the lines laid on it by hand, and the face where there is no end to go by. */
export async function readRings(
  board: CandidateBoard,
  signal: AbortSignal,
  tell: (fraction: number) => void,
): Promise<void> {
  const { end } = board;
  if (end && !known.ends.has(endKey(end))) takeFromEndPage(end);
  if (end && !known.ends.has(endKey(end))) {
    const { panel } = await panelOf(end);
    if (signal.aborted) return;
    const { ringTangents: tangents } = end;
    const options = tangents.length > 0 ? { placed: { tangents, pith: null } } : {};
    const progress = (fraction: number) => tell(0.5 * fraction);
    const job = jobs.start('endgrain', { photo: panel, options }, { progress });
    known.ends.set(endKey(end), await unlessAborted(job, signal));
  }
  if (ringsOfCandidate(board)) return;
  const { panel } = await candidatePanel(board);
  if (signal.aborted) return;
  const progress = (fraction: number) => tell(0.5 + 0.5 * fraction);
  const job = jobs.start('faceRings', { photo: panel }, { progress });
  known.faceRings.set(candidateKey(board), await unlessAborted(job, signal));
}

/** What the page of ends has read already is not read again. */
function takeFromEndPage(end: Photo): void {
  const read = useWorkbench.getState().ends[end.id];
  const question = questionOf(end, { tangents: end.ringTangents });
  if (read?.question === question) known.ends.set(endKey(end), read.result);
}

const endKey = (end: Photo) => JSON.stringify([panelKey(end), end.ringTangents]);

function unlessAborted<T>(job: RunningJob<T>, signal: AbortSignal): Promise<T> {
  signal.addEventListener('abort', () => job.cancel());
  return job.result;
}
