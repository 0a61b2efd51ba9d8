import { logLuminancePlane } from '../../src/core/colour/logLuminancePlane.js';
import type { Plane } from '../../src/core/image/plane.js';
import { sampleBilinear } from '../../src/core/image/sampleBilinear.js';
import type { LineMm } from '../../src/core/results/scoreResult.js';
import type { BenchPanel } from './accuracyPanels.js';

/** How far a line is followed into the wood (a degree of visual angle), and in what steps, mm. */
const wayMm = 10;
const stepMm = 0.25;
const alongMm = 0.5;
/** Clear of the edges of pieces by this, mm. */
const clearMm = 0.6;
/** Lines of the board's own are read at these distances from the seam, mm. */
const besideMm = [-20, -14, 14, 20];

/**
 * How far the board's own figure breaks its lines where there is no seam, as the amplitude of what
 * the two sides differ by, per own line: what masks a break of lines (method section 5).
 *
 * Every point of a line beside the seam is carried into the wood on either side along the model's
 * exact ring lines, a centimetre along; the two means are taken from each other, smoothed over
 * half a ring, and sqrt(2) rms of that is the amplitude. The product's directions have no part in it.
 *
 * @param seam the k-th seam of the panel.
 */
export function ownBreakAmplitude({ photo, truth, spec }: BenchPanel, k: number): number | null {
  const seam = spec.seams[k];
  const lines = logLuminancePlane(photo.image);
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const length = Math.hypot(x2Mm - x1Mm, y2Mm - y1Mm);
  const [tx, ty] = [(x2Mm - x1Mm) / length, (y2Mm - y1Mm) / length];
  let [sum, count] = [0, 0];
  for (const beside of besideMm) {
    const own = {
      x1Mm: x1Mm - beside * ty,
      y1Mm: y1Mm + beside * tx,
      x2Mm: x2Mm - beside * ty,
      y2Mm: y2Mm + beside * tx,
    };
    for (const value of differences(own, length)) {
      sum += value * value;
      count++;
    }
  }
  return count > 0 ? Math.sqrt((2 * sum) / count) : null;

  function differences(line: LineMm, lengthMm: number): number[] {
    const raw: number[] = [];
    const half: number[] = [];
    for (let at = alongMm / 2; at < lengthMm; at += alongMm) {
      const [x, y] = [line.x1Mm + tx * at, line.y1Mm + ty * at];
      const piece = truth.pieceAt(x, y);
      if (piece < 0) continue;
      const a = carried(lines, x, y, piece, 1);
      const b = carried(lines, x, y, piece, -1);
      if (a === null || b === null) continue;
      raw.push(b - a);
      const { angleRad, spacingMm } = truth.ringLineOfPiece(piece, x, y);
      const crossing = Math.abs(Math.cos(angleRad) * ty - Math.sin(angleRad) * tx);
      half.push(Math.min(10, spacingMm / 2 / Math.max(0.05, crossing)));
    }
    return raw.map((_, i) => {
      const reach = Math.round(half[i] / 2 / alongMm);
      const near = raw.slice(Math.max(0, i - reach), i + reach + 1);
      return near.reduce((s, v) => s + v, 0) / near.length;
    });
  }

  /** Mean of the picture along the ring line through (x, y), into the wood on one side. */
  function carried(plane: Plane, x0: number, y0: number, piece: number, side: 1 | -1) {
    let [x, y, sum, n] = [x0, y0, 0, 0];
    if (truth.pieceAt(x - tx * clearMm, y - ty * clearMm) !== piece) return null;
    if (truth.pieceAt(x + tx * clearMm, y + ty * clearMm) !== piece) return null;
    for (let way = 0; way < wayMm; way += stepMm) {
      const { angleRad } = truth.ringLineOfPiece(piece, x, y);
      const [cos, sin] = [Math.cos(angleRad), Math.sin(angleRad)];
      const across = cos * -ty + sin * tx;
      const sign = across * side < 0 ? -1 : 1;
      x += sign * cos * stepMm;
      y += sign * sin * stepMm;
      if (truth.pieceAt(x + sign * cos * clearMm, y + sign * sin * clearMm) !== piece) return null;
      sum += sampleBilinear(plane, x * photo.pxPerMm - 0.5, y * photo.pxPerMm - 0.5);
      n++;
    }
    return n >= 4 ? sum / n : null;
  }
}
