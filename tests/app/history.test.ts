import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type History, record, redo, startHistory, undo } from '../../src/app/state/history.js';

interface Doc {
  readonly name: string;
  readonly seams: readonly number[];
}

const start: Doc = { name: 'panel', seams: [1, 2] };
const change = (history: History<Doc>, n: number, gesture: string | null = null) =>
  record(
    history,
    `step ${n}`,
    (draft) => {
      if (n % 3 === 0) draft.name += n;
      else if (n % 3 === 1) draft.seams.push(n);
      else draft.seams.shift();
    },
    gesture,
  );

describe('history', () => {
  it('comes back to the start after undoing everything, and to the end after redoing it', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(20), { maxLength: 30 }), (steps) => {
        const end = steps.reduce((history, n) => change(history, n), startHistory(start));
        let back = end;
        while (back.past.length > 0) back = undo(back);
        expect(back.now).toEqual(start);
        let forth = back;
        while (forth.future.length > 0) forth = redo(forth);
        expect(forth.now).toEqual(end.now);
      }),
    );
  });

  it('takes a whole drag back in one step', () => {
    let history = change(startHistory(start), 1);
    for (const n of [3, 6, 9]) history = change(history, n, 'drag');
    expect(history.past).toHaveLength(2);
    expect(undo(history).now).toEqual({ name: 'panel', seams: [1, 2, 1] });
  });

  it('keeps two drags apart when something happened between them', () => {
    let history = change(startHistory(start), 3, 'drag');
    history = change(history, 1);
    history = change(history, 3, 'drag');
    expect(history.past).toHaveLength(3);
  });

  it('leaves no step behind when nothing changed', () => {
    const history = record(startHistory(start), 'nothing', (draft) => {
      draft.name = 'panel';
    });
    expect(history.past).toHaveLength(0);
  });

  it('forgets what was undone once something new is done', () => {
    const history = change(undo(change(startHistory(start), 1)), 3);
    expect(history.future).toHaveLength(0);
    expect(redo(history)).toBe(history);
  });
});
