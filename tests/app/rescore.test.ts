import { describe, expect, it } from 'vitest';
import { mergeRescore, rescoreOptions } from '../../src/app/analysis/rescore.js';
import { defaultScoreOptions } from '../../src/core/pipeline/scoreOptions.js';
import type { ScoreResult } from '../../src/core/results/scoreResult.js';

describe('another viewing distance', () => {
  it('measures the known joints and keeps what finding had told', () => {
    const line = { x1Mm: 0, y1Mm: 10, x2Mm: 50, y2Mm: 10 };
    const seam = { id: 'joint 1', found: 'photo', p: 0.002, line, v: 1 };
    const again = { ...seam, found: 'placed', p: null, v: 2 };
    const known = { seams: [seam], notes: ['kept'] } as unknown as ScoreResult;
    const measured = { seams: [again], notes: [] } as unknown as ScoreResult;
    expect(rescoreOptions(defaultScoreOptions, known)).toMatchObject({
      find: false,
      placedSeams: [line],
    });
    expect(mergeRescore(known, measured)).toEqual({ seams: [{ ...seam, v: 2 }], notes: ['kept'] });
  });
});
