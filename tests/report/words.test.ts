import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { disagreementTexts } from '../../src/report/forecast/disagreementTexts.js';
import { restsOn } from '../../src/report/html/restsOn.js';
import { describeScore } from '../../src/report/words/describeScore.js';
import { photoName } from '../../src/report/words/photoName.js';
import { inventedScore, inventedSeam } from '../support/inventedScore.js';

const inches = { units: 'in', denominator: 16 } as const;
const along = (yMm: number) => ({ x1Mm: 0, y1Mm: yMm, x2Mm: 760, y2Mm: yMm });
const reveal =
  'The dark line along it is an open gap or a reveal, not a glue line: it is meant to be seen and does not count.';
const apart = 'The grain lines of the two sides do not meet at any width lost or slide.';

describe('the name of a photo', () => {
  it('keeps its end, where photos differ, and has room', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^[a-z0-9_]{30,60}$/),
        fc.integer({ min: 5, max: 25 }),
        (name, most) => {
          const short = photoName(`/shop/${name}.jpg`, most);
          expect(short).toHaveLength(most);
          const [head, tail] = short.split('…') as [string, string];
          expect(name.startsWith(head) && name.endsWith(tail)).toBe(true);
          expect(tail.length).toBeGreaterThanOrEqual(head.length);
        },
      ),
    );
  });

  it('is left whole where it is short', () => {
    expect(photoName('shop/IMG_20261127_101530.JPG')).toBe('IMG_20261127_101530');
  });
});

describe('what cannot be told', () => {
  const seam = inventedSeam('s', along(200), () => 2.5, {
    offset: { mm: null, seMm: null, spacingMm: null },
    lost: { mm: null, seMm: null, slideMm: null, slideSeMm: null },
    notes: [reveal, apart],
  });

  it('is told once for each reason, and no reveal is given as one', () => {
    const [line] = describeScore(inventedScore([seam]), inches).lines;
    expect(line).toContain(
      'Cannot tell how much width was lost or how far the lines step, because the grain lines of the two sides do not meet',
    );
    expect(line!.match(/cannot tell/gi)).toHaveLength(1);
    expect(line).not.toContain('open gap');
  });

  it('stands once under what a score rests on, with all the joints that it is true of', () => {
    const two = [seam, { ...seam, id: 't', line: along(300) }];
    const rests = restsOn(inventedScore(two), inches);
    expect(rests.filter((text) => text.includes(reveal))).toEqual([
      `Upper joint and lower joint: ${reveal}`,
    ]);
  });
});

describe('a joint quieter than its stretches', () => {
  const told = (v: number | null, stretch: number) => {
    const seam = inventedSeam('s', along(200), () => stretch);
    const whole = { ...seam, visibility: { ...seam.visibility, v } };
    return restsOn(inventedScore([whole]), inches).some((text) => text.includes('single it out'));
  };

  it('is explained, and no other', () => {
    expect(told(0.3, 1.2)).toBe(true);
    expect(told(0.3, 0.4)).toBe(false);
    expect(told(1.2, 1.2)).toBe(false);
    expect(told(null, 1.2)).toBe(false);
  });
});

describe('where picture and slope differ', () => {
  it('stands in one sentence for each reason', () => {
    const at = (fromYMm: number, v: number, why: string) => ({
      ...{ fromYMm, toYMm: fromYMm + 25.4, v, vByAngle: 1, cue: null, why },
    });
    const texts = disagreementTexts(
      [at(25.4, 2, 'a'), at(101.6, 2, 'b'), at(177.8, 2, 'a'), at(228.6, 0.2, 'a')],
      inches,
    );
    expect(texts.map((text) => text.split(' from the top')[0])).toEqual([
      '1 in to 2 in and 7 in to 8 in',
      '4 in to 5 in',
      '9 in to 10 in',
    ]);
  });
});
