import type { ChildRun } from './speedChild.js';
import type { SpeedPicture } from './speedPicture.js';
import type { Scaling } from './speedScaling.js';
import { scalingLines } from './speedScalingLines.js';
import type { Lap, Times } from './speedTensor.js';

/** All that a run measured. */
export interface SpeedFindings {
  readonly times: Times;
  readonly versions: Record<string, string>;
  readonly score: readonly ChildRun[];
  readonly scaling: Scaling;
  readonly notes: readonly string[];
  readonly picture: SpeedPicture;
  readonly machine: string;
}

const tensorRows: readonly [name: string, label: string][] = [
  ['ours', 'our tensor: `structureTensor`, sigma 1 and 6 px, every 4 px'],
  ['oursWithAngles', 'the same with angle and coherence'],
  ['oursExact', 'our yardstick `structureTensorExact`, every pixel'],
  ['corner_eigen', 'native OpenCV `cornerEigenValsAndVecs`, 21 px box, 3 px Sobel'],
  ['opencv_same_kernels', 'native OpenCV, our kernels, every pixel'],
  ['scikit', 'scikit-image `structure_tensor` and orientation'],
];

const bestWall = (laps: readonly { readonly wallMs: number }[]) =>
  Math.min(...laps.map((lap) => lap.wallMs));
const bestProcessor = (laps: readonly Lap[]) => Math.min(...laps.map((lap) => lap.processorMs));

/** docs/speed.md as text. */
export function speedReport(findings: SpeedFindings): string {
  const { times, versions, score, scaling, notes, picture, machine } = findings;
  const megapixels = (picture.width * picture.height) / 1e6;
  const used = Object.entries(versions).map(([name, version]) => `${name} ${version}`);
  const lines = [
    '# Speed',
    '',
    'Written by `npm run bench:speed` (after `npm ci`; the references need',
    '`apt-get install python3-opencv python3-skimage`). Methods take turns in one run; the best',
    'of the repeats counts. Ratios hold better than times.',
    '',
    `Picture: drawn ring-porous panel with one rip, ${picture.width} x ${picture.height} px`,
    `(${megapixels.toFixed(1)} MP), ${picture.widthMm} x ${picture.heightMm} mm.`,
    `Machine: ${machine}. ${used.join(', ')}.`,
    '',
    '## Tensor',
    '',
    'One thread each. Ratios are of processor time, which a busy machine disturbs least.',
    '',
    '| method | processor, ms | clock, ms | over native OpenCV |',
    '|---|---|---|---|',
    ...tensorRows.filter(([name]) => times[name]).map(([name, label]) => row(label, times, name)),
    '',
    ...tensorAim(times),
    ...scoreLines(score, times.scikit),
    ...scalingLines(scaling),
    ...notes.map((note) => `Note: ${note}`),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function row(label: string, times: Times, name: string): string {
  const processor = bestProcessor(times[name]);
  const ratio = times.corner_eigen
    ? (processor / bestProcessor(times.corner_eigen)).toFixed(2)
    : '-';
  return `| ${label} | ${processor.toFixed(0)} | ${bestWall(times[name]).toFixed(0)} | ${ratio} |`;
}

function tensorAim({ ours, corner_eigen: native }: Times): string[] {
  if (!ours || !native) return [];
  const ratio = bestProcessor(ours) / bestProcessor(native);
  return [aim('our tensor at most 0.50 of native OpenCV', ratio, 0.5), ''];
}

function scoreLines(score: readonly ChildRun[], scikit: readonly Lap[] | undefined): string[] {
  if (score.length === 0) return [];
  const peaks = score.flatMap((run) => (run.peakMb === null ? [] : [run.peakMb]));
  const peakMb = peaks.length > 0 ? Math.max(...peaks) : null;
  const clock = bestWall(score);
  const lines = [
    '## The whole of `score`',
    '',
    'One process from start to JSON: starting Node, decoding the JPEG, everything measured.',
    `Best of ${score.length} runs ${clock.toFixed(0)} ms on the clock; most memory`,
    `${peakMb === null ? 'unknown' : `${peakMb.toFixed(0)} MB`}.`,
    '',
  ];
  if (scikit) {
    const ratio = clock / bestWall(scikit);
    lines.push(aim('`score` at most 1.00 of scikit-image on the same picture', ratio, 1), '');
  }
  if (peakMb !== null) lines.push(aim('at most 600 MB', peakMb, 600, 0), '');
  return lines;
}

function aim(text: string, measured: number, most: number, digits = 2): string {
  const verdict = measured <= most ? 'reached' : 'missed';
  return `Aim: ${text}. Measured ${measured.toFixed(digits)}: ${verdict}.`;
}
