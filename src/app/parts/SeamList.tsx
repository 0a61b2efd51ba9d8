import { describeSeam } from '../../report/words/describeSeam.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { placedIdOf, removeSeam } from '../actions/panelChanges.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { Fractions } from './Fractions.js';
import { SeamNumbers } from './SeamNumbers.js';

export interface SeamListProps {
  readonly placed: readonly PlacedSeam[];
  readonly photo: Photo;
  readonly units: LengthUnits;
  readonly chosenId: string | null;
  readonly moving: boolean;
  readonly setMoving: (moving: boolean) => void;
}

/** The joints in words; their numbers one tap away. */
export function SeamList({ placed, photo, units, chosenId, moving, setMoving }: SeamListProps) {
  if (placed.length === 0) return null;
  const choose = (id: string) => useWorkbench.setState({ chosenSeamId: id });
  return (
    <section className="stack" aria-label="Joints">
      <h2>Joints</h2>
      <ol className="seam-list">
        {placed.map((each) => {
          const { seam } = each;
          const here = seam.id === chosenId;
          const placedId = placedIdOf(photo, seam.line);
          return (
            <li key={seam.id} className={here ? 'chosen' : ''}>
              <details onToggle={(event) => event.currentTarget.open && choose(seam.id)}>
                <summary>
                  {each.number}. <Fractions text={describeSeam(each, units, false)} />
                </summary>
                <SeamNumbers seam={seam} runs={each.runs} units={units} />
                <div className="row" style={{ padding: '0 12px 12px' }}>
                  <button
                    type="button"
                    aria-pressed={here && moving}
                    onClick={() => {
                      choose(seam.id);
                      setMoving(!(here && moving));
                    }}
                  >
                    Move its ends
                  </button>
                  <button
                    type="button"
                    onClick={() => removeSeam(photo.id, { placedId, line: seam.line })}
                  >
                    Remove it
                  </button>
                </div>
              </details>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
