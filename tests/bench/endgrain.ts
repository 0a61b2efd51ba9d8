import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { faceTable } from './endgrainFace.js';
import { realEndgrain } from './endgrainReal.js';
import { type EndgrainGroup, endgrainTables, pithClaims } from './endgrainReport.js';
import { endgrainRow } from './endgrainRow.js';
import { drawnEnd, pithZones, woodSettings } from './endgrainSets.js';

// Run from the project's root: `npm run bench:endgrain [-- --quick]`. Seeds from 9000 on are kept
// for this bench; tuning used 100 to 400.
const quick = process.argv.includes('--quick');
const seeds = Array.from({ length: quick ? 1 : 8 }, (_, k) => 9000 + k);
const groups: EndgrainGroup[] = [];
for (const marked of [false, true]) {
  for (const zone of pithZones) {
    for (const setting of woodSettings) {
      const rows = seeds.map((seed) => endgrainRow(drawnEnd(seed, setting, zone, marked)));
      groups.push({ name: `${zone} | ${setting}`, inside: zone === 'inside', marked, rows });
      process.stderr.write(`${marked ? 'marked' : 'clean'} ${zone} ${setting}\n`);
    }
  }
}
const say = (what: string) => process.stderr.write(`${what}\n`);
const real = await realEndgrain();
const faces = faceTable(seeds, say);
const report = `# End grain: what the bench measured

Written by \`npm run bench:endgrain\` (seeds ${seeds[0]} to ${seeds.at(-1)} in each row).
Ends of 90 to 180 x 22 to 40 mm at 7 px/mm from the wood model, rings waving as grown; near outside:
pith 0.35 to 1.3 board widths from the middle of the end, far outside: 1 to 4 widths.
The model's ring angle is its mean direction over a disc of 6 mm radius at mid-thickness.
Goals: ring angle 2 deg; pith inside 2 mm, outside 10 % of its distance; marked ends twice that.
A pith outside is told as a figure when its claimed error is at most a quarter of its distance, else
as 'so far away or more'.
The last two columns are a bound, not a reading: the least rms error that any unbiased linear
estimate can have of the pith from ring directions (Gauss-Markov, with the covariance of the model's
own waving rings, 3000 draws an end; the Cramer-Rao bound where the waving is Gaussian), and the
share of these very ends that would be within 10 % at that error.

${endgrainTables(groups)}

${pithClaims(groups)}

## A real end

${real}

## Ring angle from the face alone

Faces of 300 x 120 to 180 mm at 6 px/mm, in strips of 10 mm across the width; told only where a
cathedral shows the pith under the face (\`grain --ring-angle\`).

${faces}
`;
const folder = quick ? join('out', 'bench') : 'docs';
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'endgrain.md'), report);
process.stdout.write(report);
