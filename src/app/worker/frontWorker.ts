import { SeamgrainError } from '../../core/errors.js';
import { standingGrainNotes } from '../../core/grain/standingGrainNotes.js';
import { forecastFront } from '../../core/pipeline/forecastFront.js';
import { confirmCurve } from '../../core/rip/confirmCurve.js';
import { type ForecastLines, forecastLines } from '../../core/rip/forecastLines.js';
import { ripLossMm } from '../../core/rip/frontCut.js';
import { ripCurve } from '../../core/rip/ripCurve.js';
import { panelPlanes } from '../../core/seam/panelPlanes.js';
import type { FrontReply, FrontRequest } from './frontMessages.js';
import { judgeFront } from './judgeFront.js';

let lines: ForecastLines | null = null;

function answer(request: FrontRequest): FrontReply {
  if (request.kind === 'panel') {
    const { photo, distanceMm, leftOut } = request.panel;
    const planes = panelPlanes(photo);
    lines = forecastLines(planes, photo, distanceMm, leftOut);
    return { kind: 'ready', notes: standingGrainNotes(planes.lab.lightness, 'rips') };
  }
  if (!lines) throw new SeamgrainError('internal', 'The panel has not been read yet.');
  if (request.kind === 'places') {
    const front = forecastFront(lines, request.options, (fraction, what) =>
      self.postMessage({ kind: 'progress', fraction, what } satisfies FrontReply),
    );
    return { kind: 'places', places: front?.placements ?? [] };
  }
  if (request.kind === 'front')
    return { kind: 'front', answer: judgeFront(lines, request.question) };
  const { loss } = request;
  const lossMm = ripLossMm(loss);
  // The best rips as a score reads them, as the command line's forecast has them.
  const { curve } = confirmCurve(lines, ripCurve(lines, lossMm), lossMm, []);
  return { kind: 'curve', loss, curve };
}

self.addEventListener('message', ({ data }: MessageEvent<FrontRequest>) => {
  try {
    self.postMessage(answer(data));
  } catch (thrown) {
    const message = thrown instanceof Error ? thrown.message : String(thrown);
    self.postMessage({ kind: 'failed', of: data.kind, message } satisfies FrontReply);
  }
});
