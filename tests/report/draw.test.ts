import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesOverlap } from '../../src/report/draw/boxesOverlap.js';
import { boxInside } from '../../src/report/draw/boxInside.js';
import { escapeXml } from '../../src/report/draw/escapeXml.js';
import { firstFreeBox } from '../../src/report/draw/firstFreeBox.js';
import { fractionParts } from '../../src/report/draw/fractionParts.js';
import { textWidthPx } from '../../src/report/draw/textWidthPx.js';
import { themes } from '../../src/report/draw/themes.js';
import { wrapText } from '../../src/report/draw/wrapText.js';
import { railCurve } from '../../src/report/score/railCurve.js';
import { stepsOfV } from '../../src/report/score/stepsOfV.js';

const words = fc.array(fc.constantFrom('the', 'lower', 'joint', '14', '3/8', 'in', 'shows,'), {
  minLength: 1,
  maxLength: 30,
});

describe('escapeXml', () => {
  it('leaves nothing that XML could read as markup or refuses', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const safe = escapeXml(text);
        expect(safe).not.toMatch(/[<>"']|&(?!amp;|lt;|gt;|quot;|#39;)/);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must be gone.
        expect(safe).not.toMatch(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/);
      }),
    );
  });
});

describe('fractionParts', () => {
  it('finds the fraction and loses no sign', () => {
    expect(fractionParts('worst 14 3/8 in').map(({ fraction }) => fraction)).toEqual([
      undefined,
      { above: '3', below: '8' },
      undefined,
    ]);
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(
          fractionParts(text)
            .map((part) => part.text)
            .join(''),
        ).toBe(text);
      }),
    );
  });

  it('leaves dates, paths and px/mm alone', () => {
    for (const text of ['1/2/2024', 'px/mm', '6.2/3']) {
      expect(fractionParts(text).every((part) => part.fraction === undefined)).toBe(true);
    }
  });
});

describe('wrapText', () => {
  it('keeps all words in order and every line that can be within the room', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 60, max: 900 }), (list, roomPx) => {
        const text = list.join(' ');
        const lines = wrapText(text, 14, roomPx);
        expect(lines.join(' ')).toBe(text);
        const [first, ...rest] = lines;
        for (const line of [first!, ...rest]) {
          const single = !/[a-z,] /.test(line) && !/ [a-hj-z]/.test(line);
          expect(single || textWidthPx(line, 14) <= roomPx, line).toBe(true);
        }
      }),
    );
  });

  it('never parts a length', () => {
    for (let room = 40; room < 400; room += 7) {
      for (const line of wrapText('worst 14 3/8 in from the left', 14, room)) {
        expect(line).not.toMatch(/\b14$|^3\/8|^in from/);
      }
    }
  });
});

describe('firstFreeBox', () => {
  it('gives only places that are inside and free', () => {
    const box = fc.record({
      x: fc.integer({ min: -20, max: 120 }),
      y: fc.integer({ min: -20, max: 120 }),
      width: fc.integer({ min: 1, max: 60 }),
      height: fc.integer({ min: 1, max: 60 }),
    });
    const bounds = { x: 0, y: 0, width: 100, height: 100 };
    fc.assert(
      fc.property(fc.array(box), fc.array(box), (wishes, taken) => {
        const found = firstFreeBox(wishes, taken, bounds);
        const free = wishes.filter(
          (w) => boxInside(w, bounds) && !taken.some((t) => boxesOverlap(w, t, 2)),
        );
        expect(found).toEqual(free[0] ?? null);
      }),
    );
  });
});

describe('the strip', () => {
  it('gives each word of the scale one step of height', () => {
    // Edges 0.5, 1, 2, 4 of the scale are one doubling apart: steps 1, 2, 3, 4.
    expect([0.5, 1, 2, 4, 8].map(stepsOfV)).toEqual([1, 2, 3, 4, 5]);
    expect(stepsOfV(1e9)).toBe(5);
    expect(stepsOfV(0)).toBeGreaterThan(0);
  });
});

describe('railCurve', () => {
  it('names places at their height and leaves out what would collide', () => {
    const samples = Array.from({ length: 40 }, (_, i) => ({
      yMm: 5 + i * 10,
      v: i % 7 === 0 ? null : i / 8,
    }));
    const marks = [100, 101, 300].map((yMm) => ({ yMm, text: `${yMm} mm` }));
    const curve = { samples, heightMm: 400, scale: 1.5, x: 900, y: 20, stepPx: 8, marks };
    const { labels, svg } = railCurve(curve, themes.bright, 'h');
    expect(labels.map(({ text }) => text)).toEqual(['100 mm', '300 mm']);
    expect(labels[0]!.y + labels[0]!.height / 2).toBeCloseTo(20 + 150, 6);
    expect(svg).toContain('url(#h)');
    expect(svg).not.toContain('NaN');
  });
});
