import type { ArrangedJoint, ArrangeResult } from '../../core/results/arrangeResult.js';
import { joinPieces } from '../draw/joinPieces.js';
import { levelPath } from '../draw/levelPath.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import { textPiece } from '../draw/textPiece.js';
import type { Theme } from '../draw/theme.js';
import { levelOfVisibility } from '../ramp/levelOfVisibility.js';
import { cannotTellLook } from '../ramp/visibilityRamp.js';
import type { ScoreFrame } from '../score/scoreFrame.js';
import { cueNoun } from '../words/cueNoun.js';
import type { LaidBoard } from './arrangedLayout.js';

/** Below this V nobody asks what the eye would catch. */
const leastTold = 0.5;

/** The band above a joint, along the length that both boards share. */
export function jointBand(
  { v }: ArrangedJoint,
  boards: readonly LaidBoard[],
  i: number,
  { panel, scale, bandPx, gapPx }: ScoreFrame,
  hatchId: string,
): string {
  const [above, below] = [boards[i]!, boards[i + 1]!];
  const fromMm = Math.max(above.leftMm, below.leftMm);
  const toMm = Math.min(above.leftMm + above.lengthMm, below.leftMm + below.lengthMm);
  const level = levelOfVisibility(v);
  const thickPx = bandPx * (level?.thickness ?? 0.6);
  const path = levelPath(level?.shape ?? 'solid', fromMm * scale, toMm * scale, thickPx);
  // On a narrow board the band lies nearer to its joint.
  const clearPx = Math.min(gapPx, 0.08 * above.widthMm * scale);
  const place = `translate(${px(panel.x)} ${px(panel.y + below.topMm * scale - clearPx)})`;
  const quiet = level?.fromV === 0;
  const light = quiet
    ? ''
    : `<path d="${path}" fill="none" stroke="#ffffff" stroke-opacity="0.85" stroke-width="4" stroke-linejoin="round"/>`;
  const fill = level?.colour ?? `url(#${hatchId})`;
  return `<g transform="${place}">${light}<path d="${path}" fill="${fill}" stroke="#161616" stroke-opacity="0.9" stroke-width="0.9"/></g>`;
}

/** What each joint shows, in words at its height beside the panel. */
export function jointNotes(
  { joints }: ArrangeResult,
  boards: readonly LaidBoard[],
  frame: ScoreFrame,
  theme: Theme,
): Piece {
  const { panel, scale, smallPx, railGapPx } = frame;
  const x = panel.x + panel.width + railGapPx;
  const roomPx = Math.min(...boards.map(({ widthMm }) => widthMm * scale));
  let takenTo = Number.NEGATIVE_INFINITY;
  const pieces = joints.flatMap(({ v, word, cue }, i) => {
    const y = panel.y + boards[i + 1]!.topMm * scale;
    // Joints of very narrow boards: the band says it, words would lie over one another.
    if (y - 0.95 * smallPx < takenTo) return [];
    takenTo = y + 0.65 * smallPx;
    const told = word ?? cannotTellLook.word;
    const tick = `<path d="M${px(panel.x + panel.width + 2)} ${px(y)}h${px(railGapPx - 5)}" ${paint(theme, 'stroke', 'quiet')} stroke-width="0.9"/>`;
    const why = v !== null && v >= leastTold && cue && roomPx > 2.7 * smallPx ? cueNoun(cue) : '';
    const first = why ? y - 0.1 * smallPx : y + 0.35 * smallPx;
    const line = (text: string, at: number, role: 'ink' | 'quiet') =>
      textPiece({ x, y: at, text, sizePx: smallPx, fill: paint(theme, 'fill', role) });
    return [
      { svg: tick, labels: [] },
      line(v === null ? told : `${told}, V ${v.toFixed(1)}`, first, 'ink'),
      ...(why ? [line(why, first + 1.25 * smallPx, 'quiet')] : []),
    ];
  });
  return joinPieces(pieces);
}
