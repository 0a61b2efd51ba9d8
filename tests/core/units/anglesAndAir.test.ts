import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SeamgrainError } from '../../../src/core/errors.js';
import { degFromRad } from '../../../src/core/units/degFromRad.js';
import { parseClimate } from '../../../src/core/units/parseClimate.js';
import { parsePercent } from '../../../src/core/units/parsePercent.js';
import { parseTemperatureC } from '../../../src/core/units/parseTemperatureC.js';
import { radFromDeg } from '../../../src/core/units/radFromDeg.js';
import { wrapHalfTurnDeg } from '../../../src/core/units/wrapHalfTurnDeg.js';
import { wrapHalfTurnRad } from '../../../src/core/units/wrapHalfTurnRad.js';

describe('angles', () => {
  it('wraps at the ends of (-90, 90]', () => {
    expect([90, -90, 91, -91, 180, 270, 0, 89].map(wrapHalfTurnDeg)).toEqual([
      90, 90, -89, 89, 0, 90, 0, 89,
    ]);
    expect(wrapHalfTurnRad(-Math.PI / 2)).toBeCloseTo(Math.PI / 2, 15);
  });

  it('keeps the line: the wrapped angle differs by whole half turns', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (angleDeg) => {
        const wrapped = wrapHalfTurnDeg(angleDeg);
        expect(wrapped).toBeGreaterThanOrEqual(-90 - 1e-9);
        expect(wrapped).toBeLessThanOrEqual(90 + 1e-9);
        const halfTurns = (angleDeg - wrapped) / 180;
        expect(halfTurns).toBeCloseTo(Math.round(halfTurns), 9);
        expect(degFromRad(radFromDeg(angleDeg))).toBeCloseTo(angleDeg, 9);
      }),
    );
  });
});

describe('air', () => {
  it('reads both scales', () => {
    expect(parseTemperatureC('212F')).toBe(100);
    expect(parseTemperatureC('-40F')).toBe(-40);
    expect(parseTemperatureC('21.5 °C')).toBe(21.5);
    expect(parsePercent('6.5 %')).toBe(6.5);
    expect(parseClimate('35%@70F')).toEqual({
      relativeHumidityPercent: 35,
      temperatureC: (38 * 5) / 9,
    });
  });

  it('read the same in words', () => {
    for (const text of ['35% at 70F', '35%, 70F', '35 % @ 70 F'])
      expect(parseClimate(text)).toEqual(parseClimate('35%@70F'));
  });

  it.each(['35%', '35@70F', '35%@70', '120%@70F', '@', '35%@70F@1'])("refuses '%s'", (text) => {
    expect(() => parseClimate(text)).toThrow(SeamgrainError);
  });
});
