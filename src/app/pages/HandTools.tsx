import { changePhoto, takeBackIn } from '../actions/panelChanges.js';
import type { Photo } from '../state/project.js';
import { type Tool, tools } from './tools.js';

export interface HandToolsProps {
  readonly photo: Photo;
  readonly tool: Tool;
  readonly setTool: (tool: Tool) => void;
}

/** Correcting by hand: place joints, leave knots and glare out. */
export function HandTools({ photo, tool, setTool }: HandToolsProps) {
  return (
    <section className="stack" aria-label="Correct by hand">
      <h2>Correct by hand</h2>
      <div className="row">
        {(Object.keys(tools) as Tool[]).map((each) => (
          <button
            key={each}
            type="button"
            aria-pressed={tool === each}
            onClick={() => setTool(tool === each ? 'look' : each)}
          >
            {tools[each].button}
          </button>
        ))}
      </div>
      <p className="soft" role="status">
        {tools[tool].how}
      </p>
      <label className="tick">
        <input
          type="checkbox"
          checked={photo.findSeams}
          onChange={({ target }) =>
            changePhoto(photo.id, 'Look for joints', (draft) => {
              draft.findSeams = target.checked;
            })
          }
        />
        look for joints in the photo
      </label>
      <PatchList photo={photo} />
    </section>
  );
}

function PatchList({ photo }: { readonly photo: Photo }) {
  if (photo.leftOut.length === 0) return null;
  const resize = (id: string, factor: number) =>
    changePhoto(photo.id, 'Resize a left-out patch', (draft) => {
      const patch = draft.leftOut.find((each) => each.id === id);
      if (!patch) return;
      patch.radiusXMm = Math.min(400, Math.max(3, patch.radiusXMm * factor));
      patch.radiusYMm = Math.min(400, Math.max(3, patch.radiusYMm * factor));
    });
  return (
    <ul className="seam-list" aria-label="Left out">
      {photo.leftOut.map(({ id, kind }, index) => (
        <li key={id} className="row">
          <span style={{ padding: '0 12px' }}>
            {kind === 'knot' ? 'Knot' : 'Glare'} {index + 1}
          </span>
          <button type="button" onClick={() => resize(id, 1.3)}>
            Larger
          </button>
          <button type="button" onClick={() => resize(id, 1 / 1.3)}>
            Smaller
          </button>
          <button type="button" onClick={() => takeBackIn(photo.id, id)}>
            Measure it again
          </button>
        </li>
      ))}
    </ul>
  );
}
