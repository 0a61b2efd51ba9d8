import type { ArrangeConflict, ArrangedBoard } from '../../results/arrangeResult.js';
import { boardCalled, listNames } from './boardCalled.js';

/**
 * What the chosen order costs at the bench: boards that plane the other way than most.
 */
export function arrangeConflicts(order: readonly ArrangedBoard[]): ArrangeConflict[] {
  const right = order.filter(({ planesTowards }) => planesTowards === 'right');
  const left = order.filter(({ planesTowards }) => planesTowards === 'left');
  const fewer = right.length < left.length ? right : left;
  if (fewer.length === 0) return [];
  const [few, many] = fewer === right ? ['right', 'left'] : ['left', 'right'];
  const sorted = [...fewer].sort((a, b) => a.board - b.board);
  const names = listNames(
    sorted.map(({ photo, isImagined }) => boardCalled({ photos: [photo, null], isImagined })),
  );
  const others = right.length + left.length - fewer.length;
  const rest = others + fewer.length < order.length ? 'rest, where known,' : 'others';
  return [
    {
      kind: 'tearOut',
      boards: sorted.map(({ board }) => board),
      text: `${names} ${sorted.length === 1 ? 'planes' : 'plane'} towards the ${few}, the ${rest} towards the ${many}: planing the glued panel will tear out on one side or the other. Plane each before gluing, or scrape and sand.`,
    },
  ];
}
