import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { defaultArrangeOptions } from '../../core/board/arrange/arrangeOptions.js';
import type { ArrangeRules } from '../../core/board/arrange/arrangeRules.js';
import type { BoardPhotos } from '../../core/board/arrange/boardPhotos.js';
import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import { fromJobFailure } from '../../job/jobFailure.js';
import { layInOrder } from '../actions/boardChanges.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { BoardPair, Photo, Settings } from '../state/project.js';
import { tellProblem } from '../state/tell.js';
import type { BoardReply, BoardRequest } from '../worker/boardMessages.js';
import BoardWorker from '../worker/boardWorker.js?worker';
import { boardRules } from './boardRules.js';

/** What is known of the boards as they lie. */
export interface Arrangement {
  /** The account of the order on the page; an older one while the boards are read. */
  readonly result: ArrangeResult | null;
  readonly fresh: boolean;
  readonly reading: { readonly fraction: number; readonly what: string } | null;
  /** Lays the boards in the best order, as one step that can be taken back. */
  findBest(): void;
}

/**
 * Reads every joint that the boards could make, once, and judges the order on the page from that:
 * a board that is dragged or turned is answered at once.
 */
export function useArrangement(
  photos: readonly Photo[],
  backs: ReadonlyMap<string, Photo>,
  boards: ReadonlyMap<string, PanelOnShelf> | null,
  pairs: readonly BoardPair[],
  settings: Settings,
): Arrangement {
  const { distanceMm, jointMm, boardSpareMm } = settings;
  const [result, setResult] = useState<Judged | null>(null);
  // Stands as long as nothing is moved by hand, with what was proved of it.
  const [best, setBest] = useState<Judged | null>(null);
  const [reading, setReading] = useState<Arrangement['reading']>(null);
  const worker = useRef<Worker | null>(null);
  // The table's boards keep one order, whatever order they are laid in.
  const ids = photos.map(({ id }) => id).sort();
  const rules = boardRules(ids, photos, pairs, settings);
  const order = orderKey(photos, rules);
  const ask = (request: BoardRequest) => worker.current?.postMessage(request);
  const askOrder = useEffectEvent(() =>
    ask({
      kind: 'order',
      rules,
      ways: photos.map(({ id, turned, slideMm, backUp }) => ({
        board: ids.indexOf(id),
        face: backUp && backs.has(id) ? 'B' : 'A',
        turned,
        slideMm,
      })),
    }),
  );
  const hear = useEffectEvent((reply: BoardReply) => {
    if (reply.kind === 'progress') setReading(reply);
    else if (reply.kind === 'ready') {
      setReading(null);
      askOrder();
    } else if (reply.kind === 'order') setResult({ order, result: reply.result });
    else if (reply.kind === 'best') {
      const laid = reply.result.order.map(({ board, turned, slideMm, face }) => ({
        ...{ id: ids[board - 1]!, turned, slideMm, backUp: face === 'B' },
      }));
      setBest({ order: orderKey(laid, rules), result: reply.result });
      layInOrder(laid);
    } else tellProblem(fromJobFailure(reply.error), 'Laying the boards');
  });
  const read = useEffectEvent((): BoardPhotos[] =>
    ids.map((id) => {
      const name = photos.find((photo) => photo.id === id)!.name;
      const back = backs.get(id);
      const faceB = back ? { photo: boards!.get(back.id)!.panel, name: back.name } : null;
      return { faceA: { photo: boards!.get(id)!.panel, name }, faceB };
    }),
  );
  const boardsKey =
    boards &&
    ids.map((id) => `${boards.get(id)?.key} ${boards.get(backs.get(id)?.id ?? '')?.key}`).join(' ');
  useEffect(() => {
    if (!boardsKey || ids.length < 2) return;
    const fresh = new BoardWorker();
    worker.current = fresh;
    fresh.addEventListener('message', ({ data }: MessageEvent<BoardReply>) => hear(data));
    const options = { ...defaultArrangeOptions, distanceMm, jointMm, spareMm: boardSpareMm };
    fresh.postMessage({ kind: 'boards', boards: read(), options } satisfies BoardRequest);
    setBest(null);
    setReading({ fraction: 0, what: 'reading the boards' });
    return () => {
      fresh.terminate();
      worker.current = null;
    };
  }, [boardsKey, ids.length, distanceMm, jointMm, boardSpareMm]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: judged anew when the order changes
  useEffect(() => {
    if (!reading) askOrder();
  }, [order]);
  const shown = best?.order === order ? best : result;
  return {
    result: shown?.result ?? null,
    fresh: shown?.order === order && !reading,
    reading,
    findBest: () => ask({ kind: 'best', rules }),
  };
}

interface Judged {
  /** `orderKey` of the order that was judged. */
  readonly order: string;
  readonly result: ArrangeResult;
}

/** Everything that an account of an order depends on, once the boards are read. */
function orderKey(
  laid: readonly Pick<Photo, 'id' | 'turned' | 'slideMm' | 'backUp'>[],
  rules: ArrangeRules,
): string {
  const lies = laid.map(({ id, turned, slideMm, backUp }) => [id, turned, slideMm, backUp]);
  return JSON.stringify([lies, rules]);
}
