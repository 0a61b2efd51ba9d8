import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../src/core/pipeline/scorePanel.js';
import { createRandom } from '../../src/core/random/createRandom.js';
import { drawnJoints, realJoints } from './eyeJoints.js';
import { eyeReport } from './eyeReport.js';
import { eyeRip, eyeRipsReport, type RipMark } from './eyeRips.js';
import { eyeSheet } from './eyeSheet.js';

// Run from the project's root. `npm run bench:eye` draws 24 joints on two sheets (out/eye) without
// saying V; look, and write each joint's mark (0 nothing there, 10 jumps out) into docs/eye-marks.json
// (out/eye/joints.json names them in their order); then `npm run bench:eye -- --compare` writes
// docs/eye.md. Once there are marks the sheets show those joints. The real photographs are fetched by
// `npm run bench:accuracy`; marked joints whose photograph is absent are left out.
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
interface Mark {
  readonly what: string;
  readonly mark: number;
}
const marks: readonly Mark[] = existsSync(marksFile)
  ? JSON.parse(readFileSync(marksFile, 'utf8'))
  : [];
const marked = marks.flatMap(({ what }) => scored.filter(({ joint }) => joint.what === what));
const shuffled = marks.length > 0 ? marked : spread();
writeFileSync(
  join(folder, 'joints.json'),
  JSON.stringify(shuffled.map(({ joint }) => ({ what: joint.what, mark: null }))),
);

/** Evenly spread over the ranks, then shuffled: the sheet must not give the order away. */
function spread() {
  const random = createRandom(24);
  return Array.from(
    { length: count },
    (_, i) => scored[Math.round((i * (scored.length - 1)) / (count - 1))],
  )
    .map((entry) => ({ entry, key: random.next() }))
    .sort((a, b) => a.key - b.key)
    .map(({ entry }) => entry);
}

for (const page of [0, 1]) {
  const part = shuffled.slice(page * 12, page * 12 + 12).map(({ joint }) => joint);
  writeFileSync(join(folder, `sheet-${page + 1}.png`), await eyeSheet(part, 1 + page * 12, 3));
}
process.stderr.write(
  `${shuffled.length} joints of ${joints.length} on ${folder}/sheet-1.png and sheet-2.png\n`,
);
const ripMarks: readonly RipMark[] = JSON.parse(
  readFileSync(join('docs', 'eye-rips-marks.json'), 'utf8'),
);
const rips = ripMarks.map(eyeRip);
writeFileSync(
  join(folder, 'rips.png'),
  await eyeSheet(
    rips.map(({ joint }) => joint),
    1,
    3,
  ),
);
if (process.argv.includes('--compare')) {
  if (!existsSync(marksFile)) throw new Error(`Look first, and write ${marksFile}.`);
  const markOf = new Map(marks.map(({ what, mark }) => [what, mark]));
  const rows = shuffled.map(({ joint, v, cue }) => {
    return { what: joint.what, v, cue, eye: markOf.get(joint.what) ?? Number.NaN };
  });
  const report = eyeReport(rows) + eyeRipsReport(ripMarks, rips);
  writeFileSync(join('docs', 'eye.md'), report);
  process.stdout.write(report);
}
