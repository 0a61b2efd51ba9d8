import { ripPanel } from '../../src/core/wood/ripPanel.js';
import { drawBench, photoOf, settings } from './accuracyPanels.js';
import { placedSeams } from './accuracyPlaced.js';
import { ringContrast, seamVByTruth } from './accuracyTruth.js';
import { type EyeJoint, eyeSize } from './eyeJoints.js';
import { rankCorrelation } from './forecastStatistics.js';

const panelSize = { widthMm: 400, heightMm: 200 };
const kerfMm = 3.175;

/** One rip of a kerf, of which a stretch was looked at. */
export interface RipMark {
  readonly seed: number;
  readonly cut: 'flatsawn' | 'quartered';
  /** Where the stretch begins, mm along the joint. */
  readonly fromMm: number;
  /** 0 nothing there, 10 jumps out. */
  readonly mark: number;
}

/** The stretch as it was looked at, and V of the whole joint: scored, and by truth. */
export function eyeRip({ seed, cut, fromMm }: RipMark) {
  const setting = settings[(seed + 1) % settings.length];
  const board = { seed, setting, cut, lengthMm: panelSize.widthMm, widthMm: panelSize.heightMm };
  const middleMm = panelSize.heightMm / 2;
  const panel = drawBench(
    ripPanel({ board, ...panelSize, cuts: [{ atMm: middleMm, lostMm: kerfMm }] }),
  );
  const truth = seamVByTruth(panel, 0, ringContrast(panel));
  return {
    what: `${setting} ${cut}, seed ${seed}`,
    joint: stretchOf(panel.photo, fromMm, middleMm),
    v: placedSeams(panel)[0].result.visibility.v ?? 0,
    vByTruth: truth.v,
    crossingDeg: truth.crossingDeg,
  };
}

function stretchOf(
  { image, pxPerMm }: EyeJoint['photo'],
  fromMm: number,
  middleMm: number,
): EyeJoint {
  const [width, height] = [eyeSize.widthMm, eyeSize.heightMm].map((mm) => Math.round(mm * pxPerMm));
  const left = Math.round(fromMm * pxPerMm);
  const top = Math.round((middleMm - eyeSize.heightMm / 2) * pxPerMm);
  const data = new Uint8Array(3 * width * height);
  for (let y = 0; y < height; y++) {
    const from = 3 * ((top + y) * image.width + left);
    data.set(image.data.subarray(from, from + 3 * width), 3 * y * width);
  }
  const y = eyeSize.heightMm / 2;
  return {
    what: '',
    photo: photoOf({ width, height, data }, pxPerMm),
    line: { x1Mm: 0, y1Mm: y, x2Mm: eyeSize.widthMm, y2Mm: y },
  };
}

/** The second part of docs/eye.md: how the angle of the lines hides a rip. */
export function eyeRipsReport(
  marks: readonly RipMark[],
  rips: readonly ReturnType<typeof eyeRip>[],
): string {
  const eye = marks.map(({ mark }) => mark);
  const rank = (pick: (rip: (typeof rips)[number]) => number) =>
    rankCorrelation(eye, rips.map(pick)).toFixed(2);
  const rows = rips.map(
    ({ what, crossingDeg, v, vByTruth }, i) =>
      `| ${i + 1} | ${what} | ${crossingDeg.toFixed(1)} | ${vByTruth.toFixed(2)} | ${v.toFixed(2)} | ${eye[i]} |`,
  );
  return `
## Rips of a kerf, by the angle of their lines

${rips.length} drawn rips of 1/8 in, flatsawn and quartered, 400 mm long; of each a stretch of ${eyeSize.widthMm} mm about
the worst place of an earlier score was marked, out of order and before V was read (out/eye/rips.png; eye-rips-marks.json). The factor by the
lines' angle (\`amongLinesFactor\`) was chosen after these marks, so they are no test of it.

**Rank correlation of mark and V: ${rank((rip) => rip.v)}**, of mark and V by truth ${rank((rip) => rip.vByTruth)} (n = ${rips.length}).

| no. | rip | lines against the joint, median, deg | V by truth | V scored | mark |
|---|---|---|---|---|---|
${rows.join('\n')}
`;
}
