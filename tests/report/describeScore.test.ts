import { describe, expect, it } from 'vitest';
import { describeScore } from '../../src/report/words/describeScore.js';
import {
  inventedChestPanel,
  inventedGoodAndBad,
  inventedManyBoards,
  inventedScore,
  inventedSeam,
  inventedSeamless,
  inventedUntold,
} from '../support/inventedScore.js';

const inches = { units: 'in', denominator: 16 } as const;
const metric = { units: 'mm' } as const;
const along = (yMm: number) => ({ x1Mm: 0, y1Mm: yMm, x2Mm: 760, y2Mm: yMm });
const lost = (change: object) => ({
  mm: null,
  seMm: null,
  slideMm: null,
  slideSeMm: null,
  ...change,
});

describe('describeScore', () => {
  it('answers as a maker would', () => {
    expect(describeScore(inventedGoodAndBad, inches).headline).toMatch(
      /^Two joints\. The upper one disappears; the lower shows from as far as \d+( 1\/2)? ft, worst 1\d( \d+\/\d+)? in from the left, where the lines step \d+\/(16|32|64) in\.$/,
    );
  });

  it('speaks millimetres and metres when asked', () => {
    expect(describeScore(inventedGoodAndBad, metric).headline).toMatch(
      /the lower shows from as far as [\d.]+ m, worst \d+ mm from the left, where the lines step [\d.]+ mm\.$/,
    );
  });

  it('puts the worst place where the worst window lies', () => {
    // Window 19 of 72 lies at 18.5/72 of 760 mm = 195.28 mm = 7.688 in, nearest sixteenth 7 11/16.
    const peak = inventedSeam('s', along(200), (share) =>
      Math.abs(share - 18.5 / 72) < 0.006 ? 6 : 1,
    );
    expect(describeScore(inventedScore([peak]), inches).headline).toContain(
      'worst 7 11/16 in from the left',
    );
  });

  it('measures a crosscut from the top', () => {
    const { headline, lines } = describeScore(
      inventedScore([
        inventedSeam('s', { x1Mm: 130, y1Mm: 100, x2Mm: 130, y2Mm: 300 }, (t) => 1 + 5 * t),
      ]),
      metric,
    );
    expect(headline).toMatch(/^One crosscut\. It .*worst 29\d mm from the top/);
    expect(lines[0]).toContain('130 mm from the left');
  });

  it('says none found without claiming there is none', () => {
    expect(describeScore(inventedSeamless, inches).headline).toBe(
      'No joint found. If you know where one is, place it by hand.',
    );
  });

  it('says that it cannot tell, and why', () => {
    const { headline, lines } = describeScore(inventedUntold, inches);
    expect(headline).toBe(
      'One joint. This photo cannot tell how visible it is, because nothing crosses the joint and nothing differs there.',
    );
    expect(lines[0]).toContain('placed by hand');
    expect(lines[0]).toContain('Cannot tell how much width was lost');
  });

  it('names rips upper to lower and crosscuts left to right', () => {
    const { headline, lines } = describeScore(inventedChestPanel, inches);
    expect(headline).toMatch(/^Two joints and two crosscuts\. The upper joint disappears; /);
    expect(lines.slice(0, 4).map((line) => line.split(',')[0])).toEqual([
      'Upper joint',
      'Lower joint',
      'Left crosscut',
      'Right crosscut',
    ]);
  });

  it('tells the pieces of one line apart', () => {
    const halves = [
      inventedSeam('a', { x1Mm: 0, y1Mm: 100, x2Mm: 200, y2Mm: 100 }, () => 0.2),
      inventedSeam('b', { x1Mm: 500, y1Mm: 101, x2Mm: 760, y2Mm: 101 }, () => 0.2),
      inventedSeam('c', { x1Mm: 0, y1Mm: 300, x2Mm: 760, y2Mm: 300 }, () => 0.2),
    ];
    const { headline, lines } = describeScore(inventedScore(halves), inches);
    expect(headline).toBe('Three joints. All three disappear.');
    expect(lines.map((line) => line.split(',')[0])).toEqual([
      'Upper left joint',
      'Upper right joint',
      'Lower joint',
    ]);
  });

  it('counts when there are many', () => {
    const { headline, lines } = describeScore(inventedManyBoards, inches);
    expect(headline).toMatch(/^Six joints\. Two disappear, one is seen only if told/);
    expect(headline).toContain('The most visible, the sixth joint from the top, jumps out');
    expect(lines.at(-1)).toBe('At 2.6 px/mm fine grain cannot be judged.');
  });

  it('gives both readings where loss and slide cannot be told apart', () => {
    const seam = inventedSeam('s', along(200), () => 2.5, {
      lost: lost({
        alternatives: [
          { mm: 6, slideMm: 0 },
          { mm: 4, slideMm: 12 },
        ],
      }),
    });
    expect(describeScore(inventedScore([seam]), metric).lines[0]).toContain(
      '6 mm lost, or 4 mm and a slide of 12 mm.',
    );
  });

  it('finds the second reading on the ridge of the errors', () => {
    // theta = atan(2/12): 2 mm less of loss is 2/tan(theta) = 12 mm of slide (delta = g cos - u sin).
    const angleDeg = (Math.atan2(2, 12) * 180) / Math.PI;
    const seam = inventedSeam('s', along(200), () => 2.5, {
      lost: lost({ mm: 6, seMm: 2, slideMm: 0, slideSeMm: 12 }),
      grain: { angleADeg: angleDeg, angleBDeg: angleDeg, changeDeg: 0, changeSeDeg: 1 },
    });
    expect(describeScore(inventedScore([seam]), metric).lines[0]).toContain(
      '6 mm lost, or 4 mm and a slide of 12 mm.',
    );
  });

  it.each([
    [{ mm: 3.1, seMm: 0.4 }, '3.1 mm lost, give or take 0.4 mm.'],
    [{ mm: 0.3, seMm: 0.4 }, 'No width lost that can be measured (give or take 0.4 mm).'],
    [
      { mm: 3, seMm: 0.2, slideMm: 5, slideSeMm: 1 },
      '3 mm lost, give or take 0.2 mm, the upper piece slid 5 mm to the right.',
    ],
    [
      { mm: 3, seMm: 0.2, wedgeMm: -0.8, wedgeSeMm: 0.2 },
      '3 mm lost, give or take 0.2 mm, 0.8 mm more at the left end than at the right.',
    ],
    [{ mm: 3, seMm: 0.2, wedgeMm: 0.3, wedgeSeMm: 0.2 }, '3 mm lost, give or take 0.2 mm.'],
    [{ mm: -2, seMm: 0.2 }, '2 mm too much, as if wood had been added, give or take 0.2 mm.'],
  ])('says %j as %s', (change, words) => {
    const seam = inventedSeam('s', along(200), () => 2.5, { lost: lost(change) });
    expect(describeScore(inventedScore([seam]), metric).lines[0]).toContain(words);
  });

  it.each([
    [0.3, 'It disappears.'],
    [0.7, 'It is seen only if told.'],
    [1.5, 'It is seen if you look for it, from as far as'],
    [3, 'It shows from as far as'],
    [6, 'It jumps out from as far as'],
  ])("puts V = %d in the scale's words", (v, words) => {
    const { headline } = describeScore(
      inventedScore([inventedSeam('s', along(200), () => v)]),
      inches,
    );
    expect(headline).toContain(words);
    if (v >= 1) expect(headline).toContain('all along, because the lines step');
  });
});
