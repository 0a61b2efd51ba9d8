import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { levelSwatch } from '../../report/score/levelSwatch.js';
import { capitalise } from '../../report/words/capitalise.js';
import { Drawing } from '../canvas/Drawing.js';
import type { FrontAnswer } from '../worker/frontMessages.js';
import { segmentName } from './frontWords.js';

/** Every joint and reveal that this place would make, with its word. */
export function SegmentList({ answer }: { readonly answer: FrontAnswer }) {
  return (
    <section className="stack" aria-label="Joints this place would make">
      <h2>Joints this place would make</h2>
      <ul className="segments">
        {answer.segments.map((segment) => {
          const level = levelOfVisibility(segment.v);
          return (
            <li key={`${segment.piece} ${segment.edge}`}>
              <svg width="32" height="14" aria-hidden="true">
                <Drawing
                  svg={`<defs>${hatchPattern('segments-hatch')}</defs>${levelSwatch(level, 1, 12, 30, 10, 'segments-hatch')}`}
                />
              </svg>
              <span>{capitalise(segmentName(segment))}</span>
              <strong>{level?.word ?? 'cannot tell'}</strong>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
