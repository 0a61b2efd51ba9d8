import { createRandom } from '../random/createRandom.js';
import { gradientNoise3, type NoiseSample } from '../random/gradientNoise3.js';
import { StreakNoise } from '../random/streakNoise.js';
import type { EndGrainSpec } from './endGrainSpec.js';
import type { PieceCanvas } from './pieceCanvas.js';
import { splatDash } from './splatDash.js';

/** Adds what saw, weather and drying leave on an end: arcs of the blade, stain, radial cracks. */
export function markEndGrain(
  canvas: PieceCanvas,
  spec: EndGrainSpec,
  pith: { readonly xMm: number; readonly yMm: number },
): void {
  const { sawMarks = 0, stain = 0, cracks = 0 } = spec;
  const random = createRandom(spec.board.seed ^ 0xe4d);
  const s = canvas.pxPerMm;
  // A round blade: arcs about its arbor, far above or below the board.
  const arborX = random.uniform(0.2, 0.8) * (canvas.width / s);
  const arborY = (random.next() < 0.5 ? -1 : 1) * random.uniform(90, 140);
  const arborAside = arborX + (random.next() < 0.5 ? -1 : 1) * random.uniform(60, 110);
  const pitchMm = random.uniform(1.1, 2.4);
  const scratch = new StreakNoise(spec.board.seed + 5, 1, 0.22);
  const noise: NoiseSample = { value: 0, dx: 0, dy: 0, dz: 0 };
  if (sawMarks > 0 || stain > 0) {
    for (let row = 0; row < canvas.height; row++) {
      const y = (row + 0.5) / s;
      for (let column = 0; column < canvas.width; column++) {
        const x = (column + 0.5) / s;
        let density = 0;
        if (sawMarks > 0) {
          const blade = Math.hypot(x - arborAside, y - arborY);
          const ridge = Math.sin((2 * Math.PI * blade) / pitchMm + 1.5 * Math.sin(blade / 6.1));
          density += sawMarks * (0.05 * ridge + 0.09 * scratch.at(0, blade));
        }
        if (stain > 0) {
          gradientNoise3(x / 17, y / 13, 0.5, spec.board.seed + 9, noise);
          const blot = Math.max(0, noise.value + 0.12);
          const rim = Math.min(x, y, canvas.width / s - x, canvas.height / s - y);
          density += stain * (0.75 * blot + 0.3 * Math.exp(-rim / 1.8));
        }
        canvas.tone[row * canvas.width + column]! += density;
      }
    }
  }
  for (let crack = 0; crack < cracks; crack++) {
    drawCrack(
      canvas,
      pith,
      random.uniform(0.08, 0.92),
      random.next(),
      random.uniform(6, 22),
      random,
    );
  }
}

/** A check runs along a ray, widest where it starts at a face or near the pith. */
function drawCrack(
  canvas: PieceCanvas,
  pith: { readonly xMm: number; readonly yMm: number },
  across: number,
  side: number,
  lengthMm: number,
  random: { uniform(low: number, high: number): number },
): void {
  const s = canvas.pxPerMm;
  const heightMm = canvas.height / s;
  let x = (across * canvas.width) / s;
  let y = side < 0.5 ? 0 : heightMm;
  const inward = side < 0.5 ? 1 : -1;
  const steps = Math.ceil(lengthMm);
  for (let step = 0; step < steps; step++) {
    const [dx, dy] = [x - pith.xMm, y - pith.yMm];
    const radius = Math.hypot(dx, dy);
    if (radius < 0.5) return;
    const way = Math.sign(dy || 1) * inward;
    const nextX = x + (way * dx) / radius + random.uniform(-0.12, 0.12);
    const nextY = y + (way * dy) / radius;
    const widthPx = 0.45 * (1 - step / steps) * s;
    splatDash(
      canvas.pores,
      canvas.width,
      canvas.height,
      x * s,
      y * s,
      nextX * s,
      nextY * s,
      widthPx,
      1.2,
    );
    [x, y] = [nextX, nextY];
    if (y < 0 || y > heightMm) return;
  }
}
