import type { LayoutResult } from '../../core/results/layoutResult.js';
import { describeAsCut } from '../../report/sheet/describeAsCut.js';
import { forgetMeasures, measurePiece } from '../actions/measurePiece.js';
import { asCutOf } from '../analysis/asCutOf.js';
import { Fractions } from '../parts/Fractions.js';
import { LengthField } from '../parts/LengthField.js';
import type { Project } from '../state/project.js';

/** What the pieces really measure after ripping, and what still comes out of them. */
export function AsCutPart({
  project: { measures, settings },
  layout,
}: {
  readonly project: Project;
  readonly layout: LayoutResult;
}) {
  const { asCut, problem } = asCutOf(layout, measures);
  const sizeOf = (piece: string) => measures.find((measure) => measure.piece === piece);
  return (
    <section className="stack" aria-label="As cut">
      <h2>As cut</h2>
      <p className="soft">Enter what the tape says after ripping and dressing; the rest follows.</p>
      <details>
        <summary className="button">Enter the pieces</summary>
        <div className="lengths spaced">
          {layout.pieces.map(({ name }) => (
            <div key={name} className="stack">
              <strong>{name}</strong>
              <LengthField
                label={`Width of the ${name}`}
                unit={settings.unit}
                mm={sizeOf(name)?.widthMm ?? null}
                onChange={(widthMm) => measurePiece(name, { widthMm })}
              />
              <LengthField
                label={`Length of the ${name}`}
                unit={settings.unit}
                mm={sizeOf(name)?.lengthMm ?? null}
                onChange={(lengthMm) => measurePiece(name, { lengthMm })}
              />
            </div>
          ))}
        </div>
        {measures.length > 0 && (
          <button type="button" onClick={forgetMeasures}>
            Forget what was measured
          </button>
        )}
      </details>
      {problem && <p className="caution">{problem}</p>}
      {measures.length > 0 &&
        asCut &&
        describeAsCut(asCut)
          .slice(2)
          .map((line) => (
            <p key={line}>
              <Fractions text={line.replace(/^> /, '')} />
            </p>
          ))}
    </section>
  );
}
