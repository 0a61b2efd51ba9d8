import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { forecastFacts, forecastSlopes } from './forecastFacts.js';
import { forecastPlaces } from './forecastPlaces.js';
import { forecastReal } from './forecastReal.js';
import { forecastReport } from './forecastReport.js';
import { forecastSlides } from './forecastSlides.js';
import { forecastSpeed } from './forecastSpeed.js';
import { forecastTruth } from './forecastTruth.js';

// Compiled to dist/bench, as deep as tests/bench: the path below holds for both.
const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const photos = process.env.SEAMGRAIN_PHOTOS ?? '/work/shared/photos';

// Seeds that were not looked at while anything was tuned.
const report = forecastReport({
  truth: await forecastTruth(20, 41_000),
  real: await forecastReal(photos),
  places: await forecastPlaces([45_000, 45_001, 45_002]),
  slides: await forecastSlides(15, 43_000),
  facts: forecastFacts(2, 44_000),
  slopes: forecastSlopes(44_000),
  speed: await forecastSpeed(root, 3),
});
mkdirSync(join(root, 'out', 'bench'), { recursive: true });
writeFileSync(join(root, 'out', 'bench', 'forecast.md'), report);
process.stdout.write(report);
