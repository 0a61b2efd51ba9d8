import {
  keepBoardAt,
  moveBoard,
  removePhoto,
  setOtherFace,
  slideBoard,
  turnBoard,
  turnBoardOver,
} from '../actions/boardChanges.js';
import { Choice } from '../parts/Choice.js';
import type { BoardPair, Photo, Settings } from '../state/project.js';
import { useProject } from '../state/workbench.js';
import { BoardKnown } from './BoardKnown.js';

export interface BoardToolsProps {
  readonly photos: readonly Photo[];
  readonly backs: ReadonlyMap<string, Photo>;
  readonly pairs: readonly BoardPair[];
  readonly chosen: Photo | null;
  readonly settings: Settings;
}

/** With less to spare boards are not slid (`shiftSteps`). */
const leastSpareMm = 8;

/** What can be done with the chosen board. */
export function BoardTools({ photos, backs, pairs, chosen, settings }: BoardToolsProps) {
  return (
    <section className="stack" aria-label="The chosen board">
      <h2>
        {chosen
          ? `${chosen.name}${chosen.turned ? ', turned end for end' : ''}`
          : 'No board chosen'}
      </h2>
      <p className="soft">
        {chosen
          ? 'Drag it up or down among the others, or use these.'
          : 'Tap a board to turn or move it; drag it to its place.'}
      </p>
      {chosen && (
        <>
          <Moves photos={photos} chosen={chosen} hasBack={backs.has(chosen.id)} />
          {settings.boardSpareMm >= leastSpareMm && (
            <Slide chosen={chosen} spareMm={settings.boardSpareMm} />
          )}
          <Choice
            label="It lies"
            value={chosen.boardPlace ?? 'anywhere'}
            options={[
              ['anywhere', 'anywhere'],
              ['top', 'at the top'],
              ['bottom', 'at the bottom'],
            ]}
            onChange={(place) => keepBoardAt(chosen.id, place === 'anywhere' ? null : place)}
          />
          {photos.length > 1 && (
            <Choice
              label="Its other face"
              value={backs.get(chosen.id)?.id ?? ''}
              options={[
                ['', 'is not photographed'],
                ...[...photos, ...backs.values()]
                  .filter(({ id, backOf }) => id !== chosen.id && (!backOf || backOf === chosen.id))
                  .filter(({ id }) => !backs.has(id))
                  .map(({ id, name }) => [id, name] as const),
              ]}
              onChange={(id) => setOtherFace(chosen.id, id || null)}
            />
          )}
          <BoardKnown photos={photos} pairs={pairs} chosen={chosen} />
        </>
      )}
    </section>
  );
}

function Moves({
  photos,
  chosen,
  hasBack,
}: {
  readonly photos: readonly Photo[];
  readonly chosen: Photo;
  readonly hasBack: boolean;
}) {
  const order = useProject()?.photos ?? [];
  const placeOf = (photo: Photo) => order.indexOf(photo);
  const at = photos.findIndex(({ id }) => id === chosen.id);
  return (
    <div className="row">
      <button type="button" onClick={() => turnBoard(chosen.id)}>
        Turn end for end
      </button>
      {hasBack && (
        <button type="button" onClick={() => turnBoardOver(chosen.id)}>
          Turn it over
        </button>
      )}
      <button
        type="button"
        disabled={at <= 0}
        onClick={() => moveBoard(chosen.id, placeOf(photos[at - 1]!))}
      >
        Up
      </button>
      <button
        type="button"
        disabled={at < 0 || at >= photos.length - 1}
        onClick={() => moveBoard(chosen.id, placeOf(photos[at + 1]!))}
      >
        Down
      </button>
      <button type="button" onClick={() => removePhoto(chosen.id)}>
        Take it away
      </button>
    </div>
  );
}

/** Steps either way within the length to spare, as the joints were read. */
function Slide({ chosen, spareMm }: { readonly chosen: Photo; readonly spareMm: number }) {
  const most = spareMm / 2;
  const step = most / Math.max(1, Math.min(3, Math.floor(most / 4)));
  const by = (mm: number) =>
    slideBoard(chosen.id, Math.max(-most, Math.min(most, chosen.slideMm + mm)));
  return (
    <div className="row">
      <button type="button" disabled={chosen.slideMm <= -most} onClick={() => by(-step)}>
        Slide left
      </button>
      <button type="button" disabled={chosen.slideMm >= most} onClick={() => by(step)}>
        Slide right
      </button>
    </div>
  );
}
