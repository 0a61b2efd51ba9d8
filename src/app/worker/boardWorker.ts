import { arrangeBoards, judgeOrder } from '../../core/board/arrange/arrangeBoards.js';
import type { JointTable } from '../../core/board/arrange/jointTable.js';
import { readJointTable } from '../../core/board/arrange/readJointTable.js';
import { SeamgrainError } from '../../core/errors.js';
import { toJobFailure } from '../../job/jobFailure.js';
import type { BoardReply, BoardRequest } from './boardMessages.js';

let table: JointTable | null = null;

function answer(request: BoardRequest): BoardReply {
  if (request.kind === 'boards') {
    table = readJointTable(request.boards, request.options, (fraction, what) =>
      self.postMessage({ kind: 'progress', fraction, what } satisfies BoardReply),
    );
    return { kind: 'ready' };
  }
  if (!table) throw new SeamgrainError('internal', 'The boards have not been read yet.');
  if (request.kind === 'best') {
    return { kind: 'best', result: arrangeBoards(table, request.rules) };
  }
  const { boards, stepMm } = table;
  const ways = request.ways.map(({ slideMm, ...way }) => {
    const most = boards[way.board]?.mostSteps ?? 0;
    return { ...way, shift: Math.min(most, Math.max(-most, Math.round(slideMm / stepMm))) + 0 };
  });
  return { kind: 'order', result: judgeOrder(table, request.rules, ways) };
}

self.addEventListener('message', ({ data }: MessageEvent<BoardRequest>) => {
  try {
    self.postMessage(answer(data));
  } catch (thrown) {
    self.postMessage({ kind: 'failed', error: toJobFailure(thrown) } satisfies BoardReply);
  }
});
