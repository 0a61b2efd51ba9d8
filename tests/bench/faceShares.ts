import { cutShares } from '../../src/core/pipeline/cutShares.js';
import { faceStrips } from './endgrainFace.js';

// How often a face tells its shares of flatsawn, rift and quartered, and how often the drawn board's
// own lie within what is told: `npm run bench:face-shares [-- FACES OF EACH KIND [FIRST SEED]]`.
const faces = Number(process.argv[2] ?? 6);
const firstSeed = Number(process.argv[3] ?? 9000);
const names = ['flatsawn', 'rift', 'quartered'] as const;
let all = 0;
let within = 0;
const off: number[] = [];

for (const setting of ['ring-porous', 'diffuse-porous', 'softwood'] as const) {
  for (const cut of names) {
    for (let seed = firstSeed; seed < firstSeed + faces; seed++) {
      const strips = faceStrips(seed, setting, cut);
      const told = cutShares(strips);
      const truth = cutShares(strips.map(({ trueDeg }) => ({ angleDeg: trueDeg, seDeg: 0 })));
      all++;
      if (!told || !truth) continue;
      const shares = names.map((name) => [told.least, truth.cut, told.most].map((of) => of[name]));
      const isWithin = shares.every(
        ([least, is, most]) => is! >= least! - 1e-9 && is! <= most! + 1e-9,
      );
      if (isWithin) within++;
      off.push(...names.map((name) => Math.abs(told.cut[name] - truth.cut[name])));
    }
  }
}

off.sort((a, b) => a - b);
const percent = (share: number) => `${Math.round(100 * share)} %`;
const toldFaces = off.length / 3;
console.log(`${toldFaces} of ${all} faces tell their shares`);
console.log(`all three within what is told: ${within} of ${toldFaces}`);
console.log(
  `a share is off by ${percent(off[off.length >> 1] ?? 0)} in the median, ${percent(off[Math.floor(0.9 * off.length)] ?? 0)} at the ninth decile`,
);
