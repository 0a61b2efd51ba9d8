import { goTo } from '../actions/openProject.js';
import { PhotoRow } from '../parts/PhotoRow.js';
import type { Photo } from '../state/project.js';

/** The photo has no scale yet, so nothing can be measured. */
export function PinFirst({ photo }: { readonly photo: Photo }) {
  return (
    <section className="stack">
      <h1>First say where the panel is and how large.</h1>
      <p className="soft">Without that, ‘{photo.name}’ has no inches to measure in.</p>
      <div className="row">
        <button type="button" className="main" onClick={() => goTo('pin')}>
          Pin the panel
        </button>
      </div>
      <PhotoRow />
    </section>
  );
}
