import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../src/core/pipeline/scorePanel.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { drawnJoints, realJoints } from './eyeJoints.js';
import { eyeReport } from './eyeReport.js';
import { eyeSheet } from './eyeSheet.js';

// Run from the project's root: `npm run bench:eye` draws the sheets (out/eye) without saying V; look,
// write the eye's marks (0 nothing there, 10 jumps out) into docs/eye-marks.json, then
// `npm run bench:eye -- --compare` writes docs/eye.md.
const folder = join('out', 'eye');
const marksFile = join('docs', 'eye-marks.json');
const count = 24;
const shared = process.env.SEAMGRAIN_PHOTOS ?? join('..', 'shared', 'photos');
const fetched = join('out', 'bench', 'photos');
mkdirSync(folder, { recursive: true });

const joints = [
  ...drawnJoints(),
  ...(await realJoints([join(shared, 'oak-veneer-no-joint.jpg')], true)),
  ...(await realJoints(
    [join(fetched, 'wood_01.jpg'), join(fetched, 'american_walnut_crown_cut_basecolor.png')],
    false,
  )),
];
const scored = joints
  .map((joint) => {
    const options = { ...defaultScoreOptions, find: false, placedSeams: [joint.line] };
    const { v, cue } = scorePanel(joint.photo, options).seams[0].visibility;
    return { joint, v: v ?? 0, cue };
  })
  .sort((a, b) => a.v - b.v);
// Evenly spread over the ranks, then shuffled: the sheet must not give the order away.
const chosen = Array.from(
  { length: count },
  (_, i) => scored[Math.round((i * (scored.length - 1)) / (count - 1))],
);
const random = createRandom(24);
const shuffled = chosen
  .map((entry) => ({ entry, key: random.next() }))
  .sort((a, b) => a.key - b.key)
  .map(({ entry }) => entry);

for (const page of [0, 1]) {
  const part = shuffled.slice(page * 12, page * 12 + 12).map(({ joint }) => joint);
  writeFileSync(join(folder, `sheet-${page + 1}.png`), await eyeSheet(part, 1 + page * 12, 3));
}
process.stderr.write(
  `${count} joints of ${joints.length} on ${folder}/sheet-1.png and sheet-2.png\n`,
);
if (process.argv.includes('--compare')) {
  if (!existsSync(marksFile)) throw new Error(`Look first, and write ${marksFile}.`);
  const { marks } = JSON.parse(readFileSync(marksFile, 'utf8')) as { marks: number[] };
  const rows = shuffled.map(({ joint, v, cue }, i) => ({
    what: joint.what,
    v,
    cue,
    eye: marks[i],
  }));
  const report = eyeReport(rows);
  writeFileSync(join('docs', 'eye.md'), report);
  process.stdout.write(report);
}
