import { describe, expect, it } from 'vitest';
import { decidesText } from '../../src/report/compare/decidesText.js';
import { gapSentence } from '../../src/report/compare/gapSentence.js';
import { sawnText } from '../../src/report/compare/sawnText.js';

const reason = { by: 'median', cue: 'break', v: 0.3, otherV: 2.4 } as const;
const first = { rank: 1, decides: reason, otherName: 'A', movesShare: null };

describe('what decides about a candidate', () => {
  it('is one sentence: what a cut shows, then who moves less and by how much', () => {
    const said =
      'Loses least: a typical rip shows less than in A, where the eye catches lines that do not meet';
    expect(decidesText(first)).toBe(`${said}.`);
    expect(decidesText({ ...first, movesShare: 2 })).toBe(`${said}; A moves half as much.`);
    expect(decidesText({ ...first, movesShare: 0.5 })).toBe(`${said}; it moves half as much.`);
    expect(decidesText({ ...first, movesShare: 0.7 })).toBe(`${said}; it moves 30 % less.`);
    // 1 / 0.8 = 1.25: the one that moves less is named, whichever it is.
    expect(decidesText({ ...first, movesShare: 1.25 })).toBe(`${said}; A moves 20 % less.`);
  });

  it('tells a later one from the one before it, and says nothing where nothing is known', () => {
    const swapped = { ...reason, v: 2.4, otherV: 0.3 };
    expect(decidesText({ ...first, rank: 2, decides: swapped })).toMatch(
      /^A typical rip shows more than in A; the eye catches/,
    );
    const equal = { by: 'equal', cue: null, v: 1, otherV: 1 } as const;
    expect(decidesText({ ...first, decides: equal, movesShare: 0.5 })).toBe(
      'Nothing that a cut would show sets it apart from A; it moves half as much.',
    );
    const untold = { by: 'untold', cue: null, v: null, otherV: 1 } as const;
    expect(decidesText({ ...first, rank: 3, decides: untold })).toMatch(/^Last:/);
    expect(decidesText({ ...first, decides: null })).toBe('');
  });
});

describe('how a candidate is sawn', () => {
  const cut = { flatsawn: 0.17, rift: 0.34, quartered: 0.49 };
  const known = { drawnDeg: null, cut };

  it('is told in coarse steps that sum to the whole, with the largest error of a share', () => {
    const least = { flatsawn: 0.17, rift: 0.22, quartered: 0.28 };
    const most = { flatsawn: 0.28, rift: 0.44, quartered: 0.61 };
    // The farthest: quartered, 0.49 - 0.28 = 21 %, told as no less: 25 %.
    expect(sawnText({ ...known, cutBy: 'face', cutEstimate: { cut, least, most } })).toBe(
      'By its face about 15 % flatsawn, 35 % rift, 50 % quartered, give or take 25 %.',
    );
    expect(sawnText({ ...known, cutBy: 'end', cutEstimate: { cut, least: cut, most: cut } })).toBe(
      'By its end 17 % flatsawn, 34 % rift, 49 % quartered.',
    );
    expect(sawnText({ cut: null, cutBy: null, cutEstimate: null, drawnDeg: null })).toBe('');
  });

  it('gives the gap its range, and calls an unknown one the fullest', () => {
    const mm = { units: 'mm' } as const;
    const told = { gapMm: 2, gapRangeMm: [1.8, 2.3] as const, ringsBy: 'face' as const };
    expect(gapSentence(told, 100, true, mm)).toMatch(/gap of 2 mm, 1\.8 mm to 2\.3 mm within/);
    expect(gapSentence({ ...told, ringsBy: null }, 100, false, mm)).toMatch(
      /All its width, 100 mm, wants a gap of 2 mm if it is flatsawn/,
    );
    expect(gapSentence({ ...told, gapMm: null }, 100, true, mm)).toBe('');
  });
});
