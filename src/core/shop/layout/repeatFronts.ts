import { SeamgrainError } from '../../errors.js';
import { exactMm } from '../../units/exactMm.js';
import type { FrontPlace } from './layoutInput.js';

/** A bank of equal fronts: so many below each other, so many beside each other. */
export interface FrontBank {
  /** The upper left front. */
  readonly first: FrontPlace;
  readonly rows: number;
  readonly columns: number;
  /** Finished width of the rail between two rows; 0 parts them by a single rip. */
  readonly railMm: number;
  /** Length of the divider between two columns; 0 parts them by a single crosscut. */
  readonly dividerMm: number;
  readonly kerfMm: number;
  readonly dressMm: number;
  readonly trimMm: number;
  readonly trimEndsMm: number;
}

/**
 * Places the fronts of a bank of drawers, a pair of doors, or both.
 * From one front to the next below: front + 2 trims + rail + 2 kerfs + 4 dressings, or with no rail
 * between them front + 2 trims + kerf + 2 dressings. Beside each other the same without dressing.
 * @throws SeamgrainError `wrongUsage` for no front or more than 12 a side
 */
export function repeatFronts(bank: FrontBank): FrontPlace[] {
  const { first, rows, columns } = bank;
  if (![rows, columns].every((count) => Number.isInteger(count) && count >= 1 && count <= 12)) {
    throw new SeamgrainError(
      'wrongUsage',
      `${rows} by ${columns} fronts cannot be laid out`,
      'give 1 to 12 in a column and 1 to 12 in a row',
    );
  }
  const pitch = (size: number, trim: number, between: number, dress: number) => {
    const cuts = between > 0 ? 2 : 1;
    const loss = exactMm(bank.kerfMm).add(exactMm(dress).mul(2)).mul(cuts);
    return exactMm(size).add(exactMm(trim).mul(2)).add(exactMm(between)).add(loss);
  };
  const down = pitch(first.widthMm, bank.trimMm, bank.railMm, bank.dressMm);
  const right = pitch(first.lengthMm, bank.trimEndsMm, bank.dividerMm, 0);
  return Array.from({ length: rows * columns }, (_, index) => {
    const row = Math.floor(index / columns);
    return {
      ...first,
      xMm: exactMm(first.xMm)
        .add(right.mul(index - row * columns))
        .valueOf(),
      yMm: exactMm(first.yMm).add(down.mul(row)).valueOf(),
    };
  });
}
