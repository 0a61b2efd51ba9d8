import type { ChildRun } from './speedChild.js';
import type { SpeedPicture } from './speedPicture.js';
import type { Times } from './speedTensor.js';

/** All that a run measured. */
export interface SpeedFindings {
  readonly times: Times;
  readonly versions: Record<string, string>;
  readonly score: readonly ChildRun[];
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

const best = (values: readonly number[]) => Math.min(...values);
const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** docs/speed.md as text. */
export function speedReport(findings: SpeedFindings): string {
  const { times, versions, score, notes, picture, machine } = findings;
  const native = times.corner_eigen && best(times.corner_eigen);
  const ratio = (ms: number) => (native ? (ms / native).toFixed(2) : '-');
  const megapixels = (picture.width * picture.height) / 1e6;
  const lines = [
    '# Speed',
    '',
    'Written by `npm run bench:speed` (after `npm ci`; the references need',
    '`apt-get install python3-opencv python3-skimage`). One thread each, methods turn and turn',
    'about in one run, best of the repeats; ratios hold better than times.',
    '',
    `Picture: drawn ring-porous panel, ${picture.width} x ${picture.height} px`,
    `(${megapixels.toFixed(1)} MP), ${picture.widthMm} x ${picture.heightMm} mm.`,
    `Machine: ${machine}; ${Object.entries(versions)
      .map(([name, version]) => `${name} ${version}`)
      .join(', ')}.`,
    '',
    '## Tensor',
    '',
    '| method | best, ms | median, ms | over native OpenCV |',
    '|---|---|---|---|',
    ...tensorRows
      .filter(([name]) => times[name])
      .map(([name, label]) => {
        const ms = best(times[name]);
        return `| ${label} | ${ms.toFixed(0)} | ${median(times[name]).toFixed(0)} | ${ratio(ms)} |`;
      }),
    '',
    ...aimLine('our tensor at most 0.50 of native OpenCV', times.ours, times.corner_eigen, 0.5),
    ...scoreLines(score, times.scikit),
    ...notes.map((note) => `Note: ${note}`),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function scoreLines(score: readonly ChildRun[], scikit: readonly number[] | undefined): string[] {
  if (score.length === 0) return [];
  const ms = score.map((run) => run.ms);
  const peaks = score.flatMap((run) => (run.peakMb === null ? [] : [run.peakMb]));
  const peak = peaks.length > 0 ? `${Math.max(...peaks).toFixed(0)} MB` : 'unknown';
  return [
    '## The whole of `score`',
    '',
    'One process from start to JSON: start of Node, decoding the JPEG, everything measured.',
    '',
    '| | best, ms | median, ms | most memory |',
    '|---|---|---|---|',
    `| \`score\` on the photo | ${best(ms).toFixed(0)} | ${median(ms).toFixed(0)} | ${peak} |`,
    '',
    ...aimLine('`score` at most 1.00 of scikit-image on the same picture', ms, scikit, 1),
  ];
}

function aimLine(
  aim: string,
  ours: readonly number[] | undefined,
  reference: readonly number[] | undefined,
  most: number,
): string[] {
  if (!ours || !reference) return [];
  const ratio = best(ours) / best(reference);
  return [
    `Aim: ${aim}. Measured ${ratio.toFixed(2)}: ${ratio <= most ? 'reached' : 'missed'}.`,
    '',
  ];
}
