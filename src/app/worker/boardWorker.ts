import { arrangeBoards, judgeOrder } from '../../core/board/arrange/arrangeBoards.js';
import { noRules } from '../../core/board/arrange/arrangeRules.js';
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
  return request.kind === 'best'
    ? { kind: 'best', result: arrangeBoards(table, noRules) }
    : { kind: 'order', result: judgeOrder(table, noRules, request.ways) };
}

self.addEventListener('message', ({ data }: MessageEvent<BoardRequest>) => {
  try {
    self.postMessage(answer(data));
  } catch (thrown) {
    self.postMessage({ kind: 'failed', error: toJobFailure(thrown) } satisfies BoardReply);
  }
});
