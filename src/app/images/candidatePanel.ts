import type { CandidateBoard } from '../analysis/candidateBoards.js';
import { woodOf } from '../analysis/candidateBoards.js';
import { jobs } from '../worker/jobs.js';
import { makeDrawable } from '../worker/photoHands.js';
import { type PanelOnShelf, panelKey, panelOf } from './shelf.js';

const drawn = new Map<string, Promise<PanelOnShelf>>();
const mostDrawn = 12;

/** What a candidate's panel depends on. */
export function candidateKey({ photo, imagined }: CandidateBoard): string {
  if (photo) return panelKey(photo);
  const { id: _, ...asked } = imagined!;
  return JSON.stringify(asked);
}

/** A candidate's face: squared up from its photo, or drawn in the worker; kept while it is asked for. */
export function candidatePanel(board: CandidateBoard): Promise<PanelOnShelf> {
  if (board.photo) return panelOf(board.photo);
  const key = candidateKey(board);
  const there = drawn.get(key);
  if (there) return there;
  const made = draw(key, board.imagined!);
  made.catch(() => drawn.delete(key));
  drawn.set(key, made);
  const oldest = drawn.keys().next().value;
  if (drawn.size > mostDrawn && oldest !== undefined) drawn.delete(oldest);
  return made;
}

async function draw(
  key: string,
  imagined: NonNullable<CandidateBoard['imagined']>,
): Promise<PanelOnShelf> {
  const { widthMm, heightMm } = imagined;
  const panel = await jobs.start('imagine', { wood: woodOf(imagined), widthMm, heightMm }).result;
  return { key, photoImageId: '', panel, drawable: await makeDrawable(panel.image) };
}
