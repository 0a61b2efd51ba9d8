import { seamlessSpecs } from './accuracyDrawn.js';
import { strongestExcess } from './accuracyNull.js';
import { drawBench } from './accuracyPanels.js';

// `npm run bench:board-law`: what the law of `boardP` is fitted to, one number per drawn board with no
// joint (tuning seeds); then the fit, by scipy.
for (const { spec } of seamlessSpecs(400, 30)) {
  process.stdout.write(`${strongestExcess(drawBench(spec).photo).toFixed(4)}\n`);
}
