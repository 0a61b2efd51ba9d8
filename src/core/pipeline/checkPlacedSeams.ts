import { SeamgrainError } from '../errors.js';
import type { PanelPhoto } from '../image/panelPhoto.js';
import type { LineMm } from '../results/scoreResult.js';

/** A joint shorter, or nearer to the panel's edge along its whole length, than this cannot be read. */
const leastMm = 5;

/**
 * Refuses seams placed where nothing can be measured.
 *
 * @throws SeamgrainError `badPanel` for a seam outside the panel, too short, or along its edge.
 */
export function checkPlacedSeams(lines: readonly LineMm[], photo: PanelPhoto): void {
  const { widthMm, heightMm } = photo;
  for (const line of lines) {
    const inside = (x: number, y: number) =>
      x >= -0.5 && x <= widthMm + 0.5 && y >= -0.5 && y <= heightMm + 0.5;
    if (!inside(line.x1Mm, line.y1Mm) || !inside(line.x2Mm, line.y2Mm)) {
      refuse(
        'A placed joint lies outside the panel.',
        `Place it within ${widthMm.toFixed(0)} x ${heightMm.toFixed(0)} mm.`,
      );
    }
    const dx = Math.abs(line.x2Mm - line.x1Mm);
    const dy = Math.abs(line.y2Mm - line.y1Mm);
    if (Math.hypot(dx, dy) < leastMm) {
      refuse('A placed joint is too short to measure.', `Make it at least ${leastMm} mm long.`);
    }
    const [a, b, limit] =
      dx >= dy ? [line.y1Mm, line.y2Mm, heightMm] : [line.x1Mm, line.x2Mm, widthMm];
    if (Math.max(a, b) < leastMm || Math.min(a, b) > limit - leastMm) {
      refuse(
        "A placed joint runs along the panel's edge: there is no wood on one side of it.",
        `Keep joints ${leastMm} mm inside the panel, or photograph more of it.`,
      );
    }
  }
}

function refuse(message: string, hint: string): never {
  throw new SeamgrainError('badPanel', message, hint);
}
