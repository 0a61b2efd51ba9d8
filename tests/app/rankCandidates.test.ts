import { describe, expect, it } from 'vitest';
import { rankCandidates } from '../../src/app/analysis/rankCandidates.js';
import { createPhoto } from '../../src/app/state/createProject.js';

const photo = (id: string) => createPhoto(id, id, id, 10, 10);
const curve = (...vs: (number | null)[]) =>
  vs.map((v, index) => ({ yMm: 10 * index, v, cue: null, vByAngle: null }));

describe('candidates', () => {
  it('are ranked by the median of what can be told, the untold last', () => {
    const photos = ['dear', 'cheap', 'untold', 'waiting'].map(photo);
    const curves = [curve(3, 1, 2, null), curve(0.2, 5, 0.4, 0.3), curve(null, null), null];
    const ranked = rankCandidates(photos, curves);
    expect(ranked.map(({ photo: { id } }) => id)).toEqual(['cheap', 'dear', 'untold', 'waiting']);
    expect(ranked[0]!.vMedian).toBeCloseTo(0.35, 12);
    expect(ranked[0]!.best).toEqual({ yMm: 0, v: 0.2 });
    expect(ranked[1]!.vMedian).toBe(2);
    expect(ranked[2]!.vMedian).toBeNull();
  });
});
