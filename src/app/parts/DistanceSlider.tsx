import { useId } from 'react';
import { viewingDistanceText } from '../../report/words/viewingDistanceText.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Settings } from '../state/project.js';
import { changeProject } from '../state/workbench.js';

const nearestMm = 250;
const farthestMm = 6000;
const steps = 100;

const distanceAt = (step: number) => nearestMm * (farthestMm / nearestMm) ** (step / steps);
const stepAt = (mm: number) =>
  Math.round((steps * Math.log(mm / nearestMm)) / Math.log(farthestMm / nearestMm));

/** How far away people stand; the words follow as it is moved. */
export function DistanceSlider({ settings }: { readonly settings: Settings }) {
  const id = useId();
  const text = viewingDistanceText(settings.distanceMm, lengthUnitsOf(settings.unit));
  return (
    <div>
      <label htmlFor={id}>
        Seen from <strong>{text}</strong>
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={steps}
        value={stepAt(settings.distanceMm)}
        aria-valuetext={text}
        onChange={({ target }) =>
          changeProject(
            'Change the viewing distance',
            (draft) => {
              draft.settings.distanceMm = Math.round(distanceAt(Number(target.value)));
            },
            'distance',
          )
        }
      />
    </div>
  );
}
