import { LengthField } from '../parts/LengthField.js';
import { useProject } from '../state/workbench.js';
import type { PinDraft } from './pinDraft.js';

/** The panel's real size, or one known distance. */
export function ScaleForm({
  draft,
  onDraft,
}: {
  readonly draft: PinDraft;
  readonly onDraft: (draft: PinDraft) => void;
}) {
  const unit = useProject()?.settings.unit ?? 'inch';
  const way = (next: PinDraft['way']) => () => onDraft({ ...draft, way: next });
  return (
    <div className="stack">
      <fieldset className="row">
        <legend className="heard-only">What is known of the panel</legend>
        <label className="tick">
          <input
            type="radio"
            name="way"
            checked={draft.way === 'corners'}
            onChange={way('corners')}
          />
          its length and width
        </label>
        <label className="tick">
          <input type="radio" name="way" checked={draft.way === 'known'} onChange={way('known')} />
          one distance in the photo
        </label>
      </fieldset>
      <div className="lengths">
        {draft.way === 'corners' ? (
          <>
            <LengthField
              label="Length, left to right"
              unit={unit}
              mm={draft.widthMm}
              onChange={(widthMm) => onDraft({ ...draft, widthMm })}
            />
            <LengthField
              label="Width, top to bottom"
              unit={unit}
              exampleMm={254}
              mm={draft.heightMm}
              onChange={(heightMm) => onDraft({ ...draft, heightMm })}
            />
          </>
        ) : (
          <LengthField
            label="Distance between the pins"
            unit={unit}
            mm={draft.lengthMm}
            onChange={(lengthMm) => onDraft({ ...draft, lengthMm })}
          />
        )}
      </div>
    </div>
  );
}
