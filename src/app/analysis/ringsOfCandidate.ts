import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import type { RunningJob } from '../../job/webWorkerClient.js';
import { candidateKey, candidatePanel } from '../images/candidatePanel.js';
import { panelOf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { jobs } from '../worker/jobs.js';
import type { CandidateBoard } from './candidateBoards.js';
import type { CandidateRings } from './candidateReading.js';
import { knownCandidates as known } from './knownCandidates.js';
import { questionOf } from './useAnswer.js';

/** The rings as far as they are read; null while something is still to be read. */
export function ringsOfCandidate(board: CandidateBoard): CandidateRings | null {
  const end = board.end ? readEnd(board.end) : null;
  if (end === undefined) return null;
  if (board.imagined || end?.cut) return { end, face: null };
  const face = known.faceRings.get(candidateKey(board));
  return face ? { end, face } : null;
}

/** What the rings depend on. */
export const ringsKeyOf = (board: CandidateBoard): string =>
  JSON.stringify([candidateKey(board), board.end && endQuestion(board.end)]);

/** Reads the end, with the lines laid on it by hand, and the face where there is no end to go by. */
export async function readRings(
  board: CandidateBoard,
  signal: AbortSignal,
  tell: (fraction: number) => void,
): Promise<void> {
  const { end } = board;
  if (end && !readEnd(end)) {
    const { panel } = await panelOf(end);
    if (signal.aborted) return;
    const { ringTangents: tangents } = end;
    const options = tangents.length > 0 ? { placed: { tangents, pith: null } } : {};
    const progress = (fraction: number) => tell(0.5 * fraction);
    const job = jobs.start('endgrain', { photo: panel, options }, { progress });
    const answer = { question: endQuestion(end), result: await unlessAborted(job, signal) };
    useWorkbench.setState(({ ends }) => ({ ends: { ...ends, [end.id]: answer } }));
  }
  if (ringsOfCandidate(board)) return;
  const { panel } = await candidatePanel(board);
  if (signal.aborted) return;
  const progress = (fraction: number) => tell(0.5 + 0.5 * fraction);
  const job = jobs.start('faceRings', { photo: panel }, { progress });
  known.faceRings.set(candidateKey(board), await unlessAborted(job, signal));
}

/** As the page of ends asks, so that neither reads what the other has read. */
const endQuestion = (end: Photo) => questionOf(end, { tangents: end.ringTangents });

function readEnd(end: Photo): EndgrainResult | undefined {
  const read = useWorkbench.getState().ends[end.id];
  return read?.question === endQuestion(end) ? read.result : undefined;
}

function unlessAborted<T>(job: RunningJob<T>, signal: AbortSignal): Promise<T> {
  signal.addEventListener('abort', () => job.cancel());
  return job.result;
}
