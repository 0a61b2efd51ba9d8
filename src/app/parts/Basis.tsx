import type { ScoreResult } from '../../core/results/scoreResult.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';

/** What the answer rests on: the photo's density, what was placed by hand, what it could not tell. */
export function Basis({
  panel,
  photo,
  score,
}: {
  readonly panel: PanelOnShelf;
  readonly photo: Photo;
  readonly score: ScoreResult | null;
}) {
  const byHand = photo.seams.length + photo.droppedSeams.length + photo.leftOut.length;
  const notes = new Set([...panel.panel.notes, ...(score?.notes ?? [])]);
  return (
    <section className="stack" aria-label="What this rests on">
      <h2>What this rests on</h2>
      <p>
        The photo ‘{photo.name}’, {panel.panel.pxPerMm.toFixed(1)} pixels to the millimetre
        {byHand > 0 ? `; ${byHand} ${byHand === 1 ? 'mark' : 'marks'} made by hand` : ''}.
      </p>
      {[...notes].map((note) => (
        <p key={note} className="soft">
          {note}
        </p>
      ))}
    </section>
  );
}
