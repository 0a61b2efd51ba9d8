import type { ArrangeResult } from '../../core/results/arrangeResult.js';
import { boardName } from '../../report/arrange/boardName.js';
import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { levelSwatch } from '../../report/score/levelSwatch.js';
import { cueNoun } from '../../report/words/cueNoun.js';
import { Drawing } from '../canvas/Drawing.js';

const hatchId = 'joints-hatch';

/** Every joint of the boards as they lie, from the top down, in words. */
export function JointList({ result: { order, joints } }: { readonly result: ArrangeResult }) {
  return (
    <section className="stack" aria-label="Joints from the top down">
      <h2>Joints from the top down</h2>
      <ol className="segments">
        {joints.map(({ v, cue }, i) => {
          const level = levelOfVisibility(v);
          const name = (at: number) => boardName(order[at]!, Number.POSITIVE_INFINITY);
          const between = `${name(i)} and ${name(i + 1)}`;
          return (
            <li key={between}>
              <svg width="32" height="14" aria-hidden="true">
                <Drawing
                  svg={`<defs>${hatchPattern(hatchId)}</defs>${levelSwatch(level, 1, 12, 30, 10, hatchId)}`}
                />
              </svg>
              <span>
                {between}
                {cue && (v ?? 0) >= 0.5 && <span className="soft">: {cueNoun(cue)}</span>}
              </span>
              <strong>{level?.word ?? 'cannot tell'}</strong>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
