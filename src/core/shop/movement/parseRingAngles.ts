import { SeamgrainError } from '../../errors.js';
import type { CutClass, RingAngles } from './ringAngles.js';

const classNames: Readonly<Record<string, CutClass>> = {
  flatsawn: 'flatsawn',
  flat: 'flatsawn',
  plainsawn: 'flatsawn',
  rift: 'rift',
  riftsawn: 'rift',
  bastard: 'rift',
  quartered: 'quartered',
  quartersawn: 'quartered',
};

/**
 * Reads a ring angle: `90deg`, `35°`, or a class name `flatsawn`, `rift`, `quartered`.
 * @throws SeamgrainError `wrongUsage`
 */
export function parseRingAngles(text: string): RingAngles {
  const word = text.toLowerCase().replace(/[\s-]/g, '');
  const cut = classNames[word];
  if (cut) return { kind: 'class', cut };
  const angle = /^(\d+(?:\.\d+)?)(?:deg|°|º)$/.exec(word);
  const angleDeg = Number(angle?.[1]);
  if (!angle || angleDeg > 90) {
    throw new SeamgrainError(
      'wrongUsage',
      `'${text}' is not a ring angle`,
      'write 0deg (flatsawn) to 90deg (quartered), or flatsawn, rift, quartered',
    );
  }
  return { kind: 'angle', angleDeg };
}
