import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { Box } from '../draw/box.js';
import { firstFreeBox } from '../draw/firstFreeBox.js';
import { joinPieces } from '../draw/joinPieces.js';
import { paint } from '../draw/paint.js';
import type { Piece } from '../draw/piece.js';
import { px } from '../draw/px.js';
import type { Theme } from '../draw/theme.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import type { PlacedSeam } from '../words/placedSeam.js';
import { placeText } from '../words/placeText.js';
import { bandInsets } from './bandInsets.js';
import { boxesOfTrack } from './boxesOfTrack.js';
import { flaggedPlaces } from './flaggedPlaces.js';
import { numberTag } from './numberTag.js';
import { pointOnTrack } from './pointOnTrack.js';
import type { ScoreFrame } from './scoreFrame.js';
import { seamBand } from './seamBand.js';
import { type SeamTrack, seamTrack } from './seamTrack.js';
import { worstFlag } from './worstFlag.js';

/**
 * Everything drawn on the wood at its seams: bands beside the lines, numbers, flags at the worst
 * places (the worst seam first, so that its flags find room), and marks at the panel's edge.
 * @returns the drawing, and all boxes that other marks should keep off
 */
export function seamMarks(
  { panel }: ScoreResult,
  placed: readonly PlacedSeam[],
  frame: ScoreFrame,
  units: LengthUnits,
  theme: Theme,
  hatchId: string,
): { readonly piece: Piece; readonly taken: readonly Box[] } {
  const tracked = placed.map((one) => ({ placed: one, track: seamTrack(one.seam.line, frame) }));
  const along = tracked.filter((one) => one.placed.runs === 'along');
  const alongBoxes = along.flatMap(({ track }) => boxesOfTrack(track, frame));
  const bands = tracked.map(({ placed: { seam, runs }, track }) => {
    const ends = runs === 'across' ? bandInsets(track, alongBoxes, frame) : undefined;
    return seamBand(seam, track, frame, hatchId, ends);
  });
  const edges = tracked.map(({ placed: { seam } }) => edgeMarks(seam.line, panel, frame, theme));
  const taken: Box[] = tracked.flatMap(({ track }) => boxesOfTrack(track, frame));
  const tagBoxes: Box[] = [];
  const tags = tracked.map(({ placed: one, track }) => tagOf(one, track, frame, tagBoxes));
  const words = [...tagBoxes];
  const flags: Piece[] = [];
  const loudFirst = [...tracked].sort(
    (a, b) => (b.placed.seam.visibility.v ?? 0) - (a.placed.seam.visibility.v ?? 0),
  );
  for (const { placed: one, track } of loudFirst) {
    flags.push(...flagsOf(one, track, frame, units, taken, words));
  }
  const drawn = { svg: [...bands, ...edges].join(''), labels: [] };
  return { piece: joinPieces([drawn, ...tags, ...flags]), taken: [...taken, ...words] };
}

/** The number sits in the band near the seam's start; further along where another stands there. */
function tagOf(
  { seam, number }: PlacedSeam,
  track: SeamTrack,
  { gapPx, bandPx, panel, widthPx }: ScoreFrame,
  otherTags: Box[],
): Piece {
  const radius = widthPx < 560 ? 7.5 : 8.5;
  const side = 2 * radius;
  const clamp = (value: number, from: number, room: number) =>
    Math.min(from + room - radius, Math.max(from + radius, value));
  const count = Math.max(1, Math.floor((track.lengthPx - 28) / 20));
  const wishes = Array.from({ length: count }, (_, index) => {
    const along = Math.min(14 + 20 * index, track.lengthPx / 2 + 20 * index);
    const at = pointOnTrack(track, along, gapPx + bandPx / 2);
    const x = clamp(at.x, panel.x, panel.width) - radius;
    const y = clamp(at.y, panel.y, panel.height) - radius;
    return { x, y, width: side, height: side };
  });
  const page = { x: 0, y: panel.y - radius, width: widthPx, height: panel.height + side };
  const box = firstFreeBox(wishes, otherTags, page, 2);
  // Seams one upon the other: the heading still has the number.
  if (!box) return { svg: '', labels: [] };
  otherTags.push(box);
  return numberTag(number, seam.found, { x: box.x + radius, y: box.y + radius }, radius);
}

function flagsOf(
  { seam, runs }: PlacedSeam,
  track: SeamTrack,
  frame: ScoreFrame,
  units: LengthUnits,
  taken: readonly Box[],
  words: Box[],
): Piece[] {
  const most = frame.widthPx < 560 ? 1 : 3;
  return flaggedPlaces(seam, most).flatMap(({ xMm, yMm }) => {
    const at = { x: frame.panel.x + xMm * frame.scale, y: frame.panel.y + yMm * frame.scale };
    const text = runs === 'along' ? placeText(xMm, units) : `${placeText(yMm, units)} from the top`;
    const flag = worstFlag(text, at, track, frame, taken, words);
    if (!flag) return [];
    words.push(...flag.boxes);
    return [flag.piece];
  });
}

/** Small pointers outside the panel where a seam runs out to its edge. */
function edgeMarks(
  line: { x1Mm: number; y1Mm: number; x2Mm: number; y2Mm: number },
  { widthMm, heightMm }: ScoreResult['panel'],
  { panel, scale }: ScoreFrame,
  theme: Theme,
): string {
  const ends = [
    [line.x1Mm, line.y1Mm],
    [line.x2Mm, line.y2Mm],
  ] as const;
  return ends
    .map(([xMm, yMm]) => {
      const [x, y] = [panel.x + xMm * scale, panel.y + yMm * scale];
      const fill = paint(theme, 'fill', 'ink');
      if (xMm < 3) return `<path d="M${px(panel.x - 1)} ${px(y)}l-8 -4v8Z" ${fill}/>`;
      if (xMm > widthMm - 3)
        return `<path d="M${px(panel.x + panel.width + 1)} ${px(y)}l8 -4v8Z" ${fill}/>`;
      if (yMm < 3) return `<path d="M${px(x)} ${px(panel.y - 1)}l-4 -8h8Z" ${fill}/>`;
      if (yMm > heightMm - 3)
        return `<path d="M${px(x)} ${px(panel.y + panel.height + 1)}l-4 8h8Z" ${fill}/>`;
      return '';
    })
    .join('');
}
