import { describe, expect, it } from 'vitest';
import { candidateBoards } from '../../src/app/analysis/candidateBoards.js';
import { rankCandidates } from '../../src/app/analysis/rankCandidates.js';
import { createPhoto } from '../../src/app/state/createProject.js';

const photo = (id: string) => ({
  ...createPhoto(id, id, id, 10, 10),
  scale: { kind: 'pxPerMm', pxPerMm: 1 } as const,
});
const boardsOf = (...ids: string[]) =>
  candidateBoards({ photos: ids.map(photo), imaginedBoards: [] });
const curve = (...vs: (number | null)[]) =>
  vs.map((v, index) => ({ yMm: 10 * index, v, cue: null, vByAngle: null }));

describe('candidates', () => {
  it('are ranked by the median of what can be told, the untold last', () => {
    const boards = boardsOf('dear', 'cheap', 'untold', 'waiting');
    const curves = [curve(3, 1, 2, null), curve(0.2, 5, 0.4, 0.3), curve(null, null), null];
    const readings = curves.map((each) => ({ curve: each, front: null }));
    const ranked = rankCandidates(boards, readings, false);
    expect(ranked.map(({ board: { id } }) => id)).toEqual(['cheap', 'dear', 'untold', 'waiting']);
    expect(ranked[0]!.vMedian).toBeCloseTo(0.35, 12);
    expect(ranked[0]!.best).toEqual({ yMm: 0, v: 0.2 });
    expect(ranked[1]!.vMedian).toBe(2);
    expect(ranked[2]!.vMedian).toBeNull();
    expect(ranked[0]!.decides).toMatchObject({ by: 'median', v: 0.35, otherV: 2 });
  });

  it('are ranked by the best place for a front, those that it does not fit last', () => {
    const place = (v: number) => ({
      place: {
        ...{ xMm: 0, yMm: 0, widthMm: 5, heightMm: 5, v },
        worst: { piece: 'front', edge: 'upper', v, cue: null } as const,
      },
    });
    const readings = [
      { curve: curve(0.1), front: { place: null, why: 'too small' } },
      { curve: curve(0.2), front: place(2) },
      { curve: curve(3), front: place(1) },
    ];
    const boards = boardsOf('misfit', 'dear', 'cheap');
    const order = (byFront: boolean) =>
      rankCandidates(boards, readings, byFront).map(({ board: { id } }) => id);
    expect(order(true)).toEqual(['cheap', 'dear', 'misfit']);
    expect(order(false)).toEqual(['misfit', 'dear', 'cheap']);
  });
});
