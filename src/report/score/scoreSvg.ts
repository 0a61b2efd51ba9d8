import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { ScoreDrawing } from './scoreDrawing.js';
import { scorePicture } from './scorePicture.js';

/**
 * The score as one SVG document: the answer as a sentence, the panel with each seam drawn beside
 * its line, the worst places flagged with their distance from the left end (crosscuts: from the
 * top), V along each joint in a strip at the same x and along each crosscut in a rail at the same
 * height, and the scale's five words.
 * @param result what `score` measured
 * @param drawing units, photo, width and theme, see `ScoreDrawing`
 */
export function scoreSvg(result: ScoreResult, drawing: ScoreDrawing): string {
  return scorePicture(result, drawing).svg;
}
