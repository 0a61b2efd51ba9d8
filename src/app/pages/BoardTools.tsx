import { moveBoard, removePhoto, turnBoard } from '../actions/boardChanges.js';
import type { Photo } from '../state/project.js';
import { useProject } from '../state/workbench.js';

/** What can be done with the chosen board. */
export function BoardTools({
  photos,
  chosen,
}: {
  readonly photos: readonly Photo[];
  readonly chosen: Photo | null;
}) {
  const order = useProject()?.photos ?? [];
  const placeOf = (photo: Photo) => order.indexOf(photo);
  const at = photos.findIndex(({ id }) => id === chosen?.id);
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
        <div className="row">
          <button type="button" onClick={() => turnBoard(chosen.id)}>
            Turn end for end
          </button>
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
      )}
    </section>
  );
}
