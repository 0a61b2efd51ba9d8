import { lengthWords } from '../../units/lengthWords.js';
import type { ExactLayout } from './exactLayout.js';

/** What the figures rest on, and what they do not cover. */
export function layoutNotes(layout: ExactLayout, isRuleTooCoarse: boolean): string[] {
  const { kerf, dress, rips, face, frontWood, trimEnds } = layout;
  const lossMm = kerf.add(dress.mul(2)).valueOf();
  const notes = [
    'The panel is taken as flat, its reference edge jointed and its reference end squared.',
    `Each of the ${rips.length} rips loses ${lengthWords(lossMm)} across the grain: one kerf and two dressings.`,
    face
      ? 'Needs: the finished face and what saw, plane and slide take. Spare is split evenly between the two sides.'
      : 'Needs: the fronts with their trim, what lies between them, and what saw and plane take. No finished face was given, so rails and end pieces count as spare.',
  ];
  if (frontWood === 'same') {
    const endGap = kerf.add(trimEnds).valueOf();
    notes.push(
      `End pieces left at their place leave ${lengthWords(endGap)} beside the front; sliding them in closes that and moves their lines along the rails by the slide.`,
    );
  } else {
    notes.push(
      'The front is of other wood: no grain runs through it. The crosscut kerfs fall inside the opening, the end pieces lose nothing there; only the rips cost pattern, between ends and rails.',
      frontWood === 'veneered'
        ? 'A veneered front on a stable core hardly moves, but a solid opening does: ask for the gap with that front and this surround.'
        : 'Front and panel move by different amounts: ask for the gap with both species.',
    );
  }
  if (isRuleTooCoarse) {
    notes.push('The rule is too coarse for the smallest pieces: the sizes shown are exact ones.');
  }
  return notes;
}
