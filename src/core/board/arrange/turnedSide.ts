import type { SeamStrip } from '../../seam/seamStrip.js';
import type { SideField } from '../../seam/sideField.js';
import type { EdgeSide } from './edgeSide.js';
import type { EdgeFigure } from './figure/edgeFigure.js';

/**
 * An edge as it reads with its board turned half round: what lay above it comes to lie below it,
 * and all that runs along it runs the other way. Directions of lines stay as they are.
 */
export function turnedSide({ line, figure }: EdgeSide): EdgeSide {
  const [lightness, a, b] = line.lab.map(turnedStrip);
  return {
    line: {
      field: turnedField(line.field),
      profile: { ...line.profile, value: reversed(line.profile.value) },
      lab: [lightness, a, b],
      etaMm: -line.etaMm,
    },
    figure: turnedFigure(figure),
  };
}

function turnedField(field: SideField): SideField {
  return {
    stepMm: field.stepMm,
    angleRad: reversed(field.angleRad),
    scalesRad: field.scalesRad.map(reversed),
    angleSeRad: reversed(field.angleSeRad),
    coherence: reversed(field.coherence),
    energy: reversed(field.energy),
  };
}

function turnedFigure({ angleRad, bendRad, lightness, carried }: EdgeFigure): EdgeFigure {
  return {
    angleRad: reversed(angleRad),
    bendRad: reversed(bendRad),
    lightness: reversed(lightness),
    carried: carried.map(reversed),
  };
}

function turnedStrip(strip: SeamStrip): SeamStrip {
  const { width, height, data } = strip.plane;
  return {
    ...strip,
    plane: { width, height, data: data.slice().reverse() },
    reachAMm: strip.reachBMm,
    reachBMm: strip.reachAMm,
  };
}

const reversed = (values: Float64Array) => values.slice().reverse();
