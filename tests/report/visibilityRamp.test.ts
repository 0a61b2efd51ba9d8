import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { visibilityWord } from '../../src/core/visibility/visibilityWord.js';
import { levelOfVisibility } from '../../src/report/ramp/levelOfVisibility.js';
import { cannotTellLook, visibilityRamp } from '../../src/report/ramp/visibilityRamp.js';

/**
 * Full dichromacy in linear sRGB, severity 1.0: Machado, Oliveira & Fernandes 2009, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6),
 * doi:10.1109/TVCG.2009.113, table of matrices [M: from memory; each row sums to 1, checked below].
 */
const eyes: Record<string, readonly number[]> = {
  usual: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  protanope: [
    0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998,
  ],
  deuteranope: [
    0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881,
  ],
  tritanope: [
    1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039,
  ],
};
/** Typical finished faces in even light, picked by eye. */
const woods = {
  maple: '#e2c9a2',
  mapleInShade: '#cfae82',
  oak: '#c2a072',
  cherry: '#b0714a',
  walnutSapwood: '#8a6a50',
  walnut: '#5d4232',
  walnutInShade: '#3e2c22',
};

function seenBy(eye: string, colour: string): Color {
  const m = eyes[eye]!;
  const [r, g, b] = new Color(colour).to('srgb-linear').coords as [number, number, number];
  const row = (i: number) => Math.min(1, Math.max(0, m[i]! * r + m[i + 1]! * g + m[i + 2]! * b));
  return new Color('srgb-linear', [row(0), row(3), row(6)]);
}

describe("the scale's colours", () => {
  it.each(Object.keys(eyes))('grey stays grey to a simulated %s', (eye) => {
    expect(seenBy(eye, '#808080').deltaE('#808080', '2000')).toBeLessThan(0.1);
  });

  for (const eye of Object.keys(eyes)) {
    it(`keeps neighbouring steps apart for a ${eye} (CIEDE2000 of at least 12)`, () => {
      for (let i = 0; i + 1 < visibilityRamp.length; i++) {
        const [a, b] = [visibilityRamp[i]!, visibilityRamp[i + 1]!];
        expect(
          seenBy(eye, a.colour).deltaE(seenBy(eye, b.colour), '2000'),
          `${a.word} / ${b.word}`,
        ).toBeGreaterThan(12);
      }
    });

    it(`keeps every step off every wood for a ${eye} (CIEDE2000 of at least 14)`, () => {
      for (const { word, colour } of visibilityRamp) {
        for (const [wood, woodColour] of Object.entries(woods)) {
          expect(
            seenBy(eye, colour).deltaE(seenBy(eye, woodColour), '2000'),
            `${word} on ${wood}`,
          ).toBeGreaterThan(14);
        }
      }
    });
  }

  it('gets darker with every step, so that a copier keeps the order', () => {
    const lightness = visibilityRamp.map(({ colour }) => new Color(colour).to('lab').coords[0]!);
    for (let i = 0; i + 1 < lightness.length; i++) {
      expect(lightness[i]! - lightness[i + 1]!).toBeGreaterThan(4);
    }
  });

  it('keeps text on each step readable (contrast of at least 4.5, WCAG 2.2 section 1.4.3)', () => {
    for (const { colour, textOnColour } of visibilityRamp) {
      expect(new Color(colour).contrastWCAG21(textOnColour)).toBeGreaterThan(4.5);
    }
  });

  it('gives each step a shape and a thickness of its own, growing', () => {
    expect(new Set(visibilityRamp.map((level) => level.shape)).size).toBe(5);
    const thickness = visibilityRamp.map((level) => level.thickness);
    expect(thickness).toEqual([...thickness].sort((a, b) => a - b));
    expect(new Set(thickness).size).toBe(5);
  });

  it('draws the untold in greys that belong to no step', () => {
    for (const colour of [cannotTellLook.ground, cannotTellLook.stroke]) {
      expect(new Color(colour).to('lch').coords[1]).toBeLessThan(1);
    }
  });
});

describe('levelOfVisibility', () => {
  // Edges as in method.md section 5: below 0.5, 0.5-1, 1-2, 2-4, above 4.
  it.each([
    [0, 'disappears'],
    [0.4999, 'disappears'],
    [0.5, 'only if told'],
    [0.9999, 'only if told'],
    [1, 'if you look for it'],
    [1.9999, 'if you look for it'],
    [2, 'shows'],
    [4, 'shows'],
    [4.0001, 'jumps out'],
    [1e9, 'jumps out'],
  ])("puts V = %d at '%s'", (v, word) => {
    expect(levelOfVisibility(v)?.word).toBe(word);
  });

  it('agrees with the words that the score itself uses', () => {
    const v = fc.oneof(fc.double({ min: 0, max: 10, noNaN: true }), fc.constantFrom(0.5, 1, 2, 4));
    fc.assert(
      fc.property(v, (value) => {
        expect(levelOfVisibility(value)?.word).toBe(visibilityWord(value));
      }),
    );
  });

  it('has no level for the untold', () => {
    expect(levelOfVisibility(null)).toBeNull();
  });
});
