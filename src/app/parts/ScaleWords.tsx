import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { visibilityRamp } from '../../report/ramp/visibilityRamp.js';
import { levelSwatch } from '../../report/score/levelSwatch.js';
import { Drawing } from '../canvas/Drawing.js';

const hatchId = 'words-hatch';

/** The five words of the one scale, each with its colour and shape, and 'cannot tell'. */
export function ScaleWords() {
  return (
    <ul className="scale-words" aria-label="How visible">
      {[...visibilityRamp, null].map((level) => (
        <li key={level?.word ?? 'cannot tell'}>
          <svg width="32" height="14" aria-hidden="true">
            <Drawing
              svg={`<defs>${hatchPattern(hatchId)}</defs>${levelSwatch(level, 1, 12, 30, 10, hatchId)}`}
            />
          </svg>
          {level?.word ?? 'cannot tell'}
        </li>
      ))}
    </ul>
  );
}
