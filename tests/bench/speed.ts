import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ChildRun, speedChild } from './speedChild.js';
import { speedPicture } from './speedPicture.js';
import { speedReport } from './speedReport.js';
import { speedScaling } from './speedScaling.js';
import { speedTensor, speedTensorExact, type Times } from './speedTensor.js';

// Compiled to dist/bench, as deep as tests/bench: the paths below hold for both.
const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const python = process.env.SEAMGRAIN_PYTHON ?? '/usr/bin/python3';
const rounds = 3;
const repeats = 2;

const picture = await speedPicture(join(root, 'out', 'bench'), 640, 480, 6.25);
const grey = readFileSync(picture.grey);
const plane = {
  width: picture.width,
  height: picture.height,
  data: Float32Array.from(grey, (level) => level / 255),
};

const times: Times = {};
const add = (more: Times) => {
  for (const [name, values] of Object.entries(more)) {
    times[name] = [...(times[name] ?? []), ...values];
  }
};
const { width, height, widthMm, heightMm } = picture;
const versions: Record<string, string> = { Node: process.version };
const notes: string[] = [];
const busy = loadavg()[0].toFixed(1);
const machine = `${cpus()[0]?.model ?? 'unknown'}, ${cpus().length} cores, load at start ${busy}`;
const script = join(root, 'tests', 'bench', 'speedReference.py');
const referenceArgs = [script, picture.grey, `${width}`, `${height}`, `${repeats}`];
const bin = join(root, 'dist', 'cli', 'bin.js');
const score: ChildRun[] = [];
for (let round = 0; round < rounds; round++) {
  // Turn and turn about, so that a busy moment of the machine hits both.
  add(speedTensor(plane, repeats));
  for (let repeat = 0; repeat < repeats; repeat++) score.push(...(await scoreRun()));
  const reference = await speedChild(python, referenceArgs).catch(() => null);
  if (reference?.status === 0) {
    const answer = JSON.parse(reference.stdout) as { times: Times; versions: object };
    add(answer.times);
    Object.assign(versions, answer.versions);
  } else {
    notes.push(`References not run: ${python} with cv2 and skimage is needed.`);
    break;
  }
}

add(speedTensorExact(plane));

const scaling = await speedScaling(join(root, 'out', 'bench'), bin);
writeFileSync(
  join(root, 'docs', 'speed.md'),
  speedReport({ times, versions, score, scaling, notes, picture, machine }),
);
process.stdout.write(readFileSync(join(root, 'docs', 'speed.md'), 'utf8'));

/** The whole of `score` on the same panel as a photo; empty when it does not run. */
async function scoreRun(): Promise<ChildRun[]> {
  const size = `${widthMm}mmx${heightMm}mm`;
  const args = [bin, 'score', picture.photo, '--size', size, '--json'];
  const run = await speedChild(process.execPath, args);
  if (run.status === 0) return [run];
  notes.push('`score` did not finish on this picture, so it is not timed.');
  return [];
}
