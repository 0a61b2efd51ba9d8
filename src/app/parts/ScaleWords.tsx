import { visibilityRamp } from '../../report/ramp/visibilityRamp.js';
import { LevelLine } from '../canvas/LevelLine.js';

/** The five words of the one scale, each with its colour and shape, and 'cannot tell'. */
export function ScaleWords() {
  return (
    <ul className="scale-words" aria-label="How visible">
      {[...visibilityRamp, null].map((level) => (
        <li key={level?.word ?? 'cannot tell'}>
          <svg width="36" height="16" aria-hidden="true">
            <LevelLine x1={3} x2={33} y1={8} y2={8} level={level} />
          </svg>
          {level?.word ?? 'cannot tell'}
        </li>
      ))}
    </ul>
  );
}
