import type { ForecastOptions } from '../../core/pipeline/forecastOptions.js';
import type { ForecastPlacement } from '../../core/results/forecastResult.js';
import type { CutLoss } from '../../core/rip/frontCut.js';
import type { RipCost } from '../../core/rip/ripCurve.js';
import type {
  FrontAnswer,
  FrontPanel,
  FrontQuestion,
  FrontReply,
  FrontRequest,
} from './frontMessages.js';
import FrontWorker from './frontWorker.js?worker';

/** What the bench tells as answers come in. */
export interface FrontListener {
  onReady(notes: readonly string[]): void;
  onCurve(loss: CutLoss, curve: readonly RipCost[]): void;
  onFront(answer: FrontAnswer): void;
  onPlaces(places: readonly ForecastPlacement[]): void;
  onProgress(fraction: number, what: string): void;
  onProblem(message: string, of: FrontRequest['kind']): void;
}

/** A panel on which fronts are tried: asked again and again while one is dragged. */
export interface FrontBench {
  askCurve(loss: CutLoss): void;
  /** Only the newest question is answered; older ones that wait are dropped. */
  askFront(question: FrontQuestion): void;
  /** Searches every place; what is asked meanwhile waits. */
  askPlaces(options: ForecastOptions): void;
  close(): void;
}

/** Reads a panel in a worker of its own and keeps it there, so that each try is quick. */
export function openFrontBench(panel: FrontPanel, listener: FrontListener): FrontBench {
  const worker = new FrontWorker();
  let busy = true;
  let nextFront: FrontQuestion | null = null;
  let nextCurve: CutLoss | null = null;
  let nextPlaces: ForecastOptions | null = null;
  const send = (request: FrontRequest) => {
    busy = true;
    worker.postMessage(request);
  };
  const goOn = () => {
    busy = false;
    if (nextFront) {
      const question = nextFront;
      nextFront = null;
      send({ kind: 'front', question });
    } else if (nextCurve) {
      const loss = nextCurve;
      nextCurve = null;
      send({ kind: 'curve', loss });
    } else if (nextPlaces) {
      const options = nextPlaces;
      nextPlaces = null;
      send({ kind: 'places', options });
    }
  };
  worker.addEventListener('message', ({ data }: MessageEvent<FrontReply>) => {
    if (data.kind === 'ready') listener.onReady(data.notes);
    if (data.kind === 'curve') listener.onCurve(data.loss, data.curve);
    if (data.kind === 'front') listener.onFront(data.answer);
    if (data.kind === 'places') listener.onPlaces(data.places);
    if (data.kind === 'failed') listener.onProblem(data.message, data.of);
    if (data.kind === 'progress') {
      listener.onProgress(data.fraction, data.what);
      return;
    }
    goOn();
  });
  worker.addEventListener('error', ({ message }) => listener.onProblem(message, 'panel'));
  send({ kind: 'panel', panel });
  return {
    askCurve(loss) {
      nextCurve = loss;
      if (!busy) goOn();
    },
    askFront(question) {
      nextFront = question;
      if (!busy) goOn();
    },
    askPlaces(options) {
      nextPlaces = options;
      if (!busy) goOn();
    },
    close: () => worker.terminate(),
  };
}
