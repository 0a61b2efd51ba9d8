import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standingGrainNotes } from '../../../src/core/grain/standingGrainNotes.js';
import { defaultForecastOptions } from '../../../src/core/pipeline/forecastOptions.js';
import { forecastPanel } from '../../../src/core/pipeline/forecastPanel.js';
import { gratingPlanes, greyPhoto } from '../seam/gratingJoint.js';

/** Lines at an angle to the length, wide beside a patch; differences taken as derivatives. */
function stripes(angleDeg: number, spacing = 24) {
  const size = 96;
  const a = (angleDeg * Math.PI) / 180;
  const data = Float32Array.from({ length: size * size }, (_, i) => {
    const across = Math.floor(i / size) * Math.cos(a) - (i % size) * Math.sin(a);
    return 60 + 5 * Math.sin((2 * Math.PI * across) / spacing);
  });
  return { width: size, height: size, data };
}

describe('grain that runs up and down', () => {
  it('is said from tan(a)^2 = 2 on, a = 54.7 deg, to whichever side it leans', () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 90, noNaN: true }), (angleDeg) => {
        fc.pre(Math.abs(Math.abs(angleDeg) - 54.74) > 2);
        const notes = standingGrainNotes(stripes(angleDeg), 'rips');
        expect(notes).toHaveLength(Math.abs(angleDeg) > 54.74 ? 1 : 0);
      }),
    );
  });

  it('is told with a forecast, and not of a panel that lies as it should', () => {
    const notesAt = (angleDeg: number) => {
      const panel = { widthMm: 90, heightMm: 70, pxPerMm: 4, contrast: 0.1, spacingMm: 4 };
      const photo = greyPhoto(gratingPlanes({ ...panel, angleDeg }));
      return forecastPanel(photo, { ...defaultForecastOptions, ripsMm: [35] }).notes.join(' ');
    };
    expect(notesAt(85)).toMatch(/up and down in this photo/);
    expect(notesAt(5)).not.toMatch(/up and down/);
  });
});
