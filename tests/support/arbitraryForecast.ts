import fc from 'fast-check';
import type {
  ForecastPlacement,
  ForecastResult,
  ForecastRip,
} from '../../src/core/results/forecastResult.js';
import { visibilityWord } from '../../src/core/visibility/visibilityWord.js';

const v = fc.option(fc.double({ min: 0, max: 12, noNaN: true }), { nil: null });

function ripAt(yMm: number, value: number | null, slideMm: number): ForecastRip {
  return {
    yMm,
    visibility: {
      ...{
        v: value,
        pSeen: value === null ? null : 0.5,
        vanishesAtMm: value && value > 1 ? 1800 : null,
      },
      ...{
        cue: value === null ? null : 'break',
        word: value === null ? null : visibilityWord(value),
      },
    },
    ...{ vByAngle: value, bestSlideMm: value === null ? null : slideMm, vAtBestSlide: value },
    ...{ slidesByAngleMm: [slideMm], notes: value === null ? ['Too little wood.'] : [] },
    windows: [0, 1, 2].map((i) => ({
      ...{
        atMm: 40 + 60 * i,
        v: value === null ? null : value * (1 - 0.3 * i),
        cue: 'break' as const,
      },
      ...{ offsetMm: 1.2, changeDeg: 2, vByAngle: value },
    })),
  };
}

function placementAt(rank: number, xMm: number, yMm: number, value: number): ForecastPlacement {
  const worst = { piece: 'front', edge: 'upper', v: value } as const;
  const segment = { piece: 'front', edge: 'upper', glued: false, cue: 'break' } as const;
  const line = { x1Mm: xMm, y1Mm: yMm, x2Mm: xMm + 200, y2Mm: yMm };
  return {
    ...{ rank, xMm, yMm, widthMm: 200, heightMm: 60, v: value, cost: value ** 3, worst },
    ...{
      slides: { left: 0, right: 0, upper: 3.25, lower: -2 },
      vAtSlides: value / 2,
      slidesCostMm: 5.25,
    },
    segments: [{ ...segment, line, v: value, word: visibilityWord(value), vAtSlides: value / 2 }],
    ...{ turned: rank === 2, otherEnds: { ends: 'close', v: value, worst } },
    leftOut: rank === 3 ? ['front', 'upper rip'] : [],
    notes: rank === 3 ? ['An area that you left out lies on the front’s face.'] : [],
  };
}

const leftOutPatch: ForecastResult['leftOut'][number] = [
  [100, 40],
  [130, 40],
  [115, 70],
];

/** Forecasts of any shape that the types allow. */
export const arbitraryForecast: fc.Arbitrary<ForecastResult> = fc
  .record({
    heightMm: fc.integer({ min: 130, max: 700 }),
    widthMm: fc.integer({ min: 260, max: 1200 }),
    costs: fc.array(v, { minLength: 0, maxLength: 60 }),
    rips: fc.array(v, { maxLength: 3 }),
    places: fc.array(fc.double({ min: 0, max: 9, noNaN: true }), { maxLength: 3 }),
    slideMm: fc.constantFrom(0, 4.5, -12),
  })
  .map(({ heightMm, widthMm, costs, rips, places, slideMm }) => {
    const curve = costs.map((value, i) => ({
      ...{ yMm: 8 + (i * (heightMm - 16)) / 60, v: value, vByAngle: value, cue: 'break' as const },
    }));
    const summary = { vMedian: 1, vBest: 0, bestYMm: curve[0]?.yMm ?? null, disappears: 0.4 };
    return {
      ...{ schema: 'seamgrain/forecast@1', panel: { widthMm, heightMm, pxPerMm: 6 } },
      ...{
        kerfMm: 3.175,
        dressMm: 0.4,
        lossMm: 3.975,
        distanceMm: 600,
        spareMm: 25.4,
        revealMm: 1.6,
      },
      ...{ curve, summary, disagreements: [] },
      rips: rips.map((value, i) => ripAt(20 + 30 * i, value, slideMm)),
      placements: places.map((value, i) => placementAt(i + 1, 20 + 5 * i, 30 + 8 * i, value)),
      search:
        places.length > 0 ? { tried: 1234, vMedian: 2, ends: 'stay' as const, clear: 900 } : null,
      ...{ reglued: null, depth: null, imagined: [], notes: [] },
      leftOut: rips.length === 2 ? [leftOutPatch] : [],
    };
  });
