import { maskCue } from '../visibility/maskCue.js';

/** Sums of one cue's strength x over the stretches of one line that told it. */
export interface CueSums {
  readonly count: number;
  /** Sum of x^2. */
  readonly squares: number;
  /** Sum of the squares that errors of the reading alone would give. */
  readonly errors: number;
  /** Sum of x^3, and of what of it counts where lines run nearly along the joint. */
  readonly cubes: number;
  readonly counting: number;
}

/** What a board does by itself in one cue. */
export interface OwnFigure {
  /** Mean of x^3 over lines with no seam, and its spread from line to line. */
  readonly usual: number;
  readonly spread: number;
  readonly rms: number;
}

/** Errors are only known so well: this share of what is read hides a joint whatever they are. */
const leastShare = 0.25;

/**
 * A board's own figure in one cue, from lines that carry no joint. Lines that told nothing are
 * left out; with none left there is no figure and nothing is masked.
 *
 * What errors of the reading give is no figure and hides nothing: it stays in `usual` and `spread`,
 * as the joint is read with the same errors, and is taken off `rms`.
 */
export function ownFigure(lines: readonly CueSums[]): OwnFigure {
  let told = 0;
  let usual = 0;
  let square = 0;
  let [count, squares, errors] = [0, 0, 0];
  for (const line of lines) {
    if (line.count === 0) continue;
    const cube = line.cubes / line.count;
    told++;
    usual += cube;
    square += cube * cube;
    count += line.count;
    squares += line.squares;
    errors += line.errors;
  }
  if (told === 0) return { usual: 0, spread: 0, rms: 0 };
  usual /= told;
  const spread = Math.sqrt(Math.max(0, square / told - usual * usual));
  return {
    usual,
    spread,
    rms: Math.sqrt(Math.max(leastShare * squares, squares - errors) / count),
  };
}

/**
 * What a line has above the board's own figure, masked by it:
 * (max(0, M - (usual + spreads * spread)))^(1/3) / sqrt(1 + (2 rms)^2).
 *
 * @param cube mean of x^3 along the line. @param spreads how many spreads still count as usual.
 */
export function aboveFigure(cube: number, figure: OwnFigure, spreads: number): number {
  const excess = cube - (figure.usual + spreads * figure.spread);
  return maskCue(Math.cbrt(Math.max(0, excess)), figure.rms);
}
