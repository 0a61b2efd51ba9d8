import type { LayoutResult, LayoutStep } from '../../core/results/layoutResult.js';
import { lengthWords } from '../../core/units/lengthWords.js';
import { Fractions } from '../parts/Fractions.js';

/** The work in order: every cut with its setting in big numbers, cautions beside the step. */
export function CutList({ layout }: { readonly layout: LayoutResult }) {
  const { needs, spare, steps, cuts, cautions, notes } = layout;
  return (
    <section className="stack" aria-label="The work in order">
      <h2>The work in order</h2>
      <p>
        <Fractions
          text={`Needs ${lengthWords(needs.lengthMm)} along the grain and ${lengthWords(needs.widthMm)} across; ${lengthWords(spare.lengthMm)} and ${lengthWords(spare.widthMm)} to spare.`}
        />
      </p>
      <ol className="steps">
        {steps.map((step) => (
          <Step
            key={`${step.cut} ${step.title} ${step.text}`}
            step={step}
            setting={cuts.find(({ n }) => n === step.cut)?.setting.text ?? null}
          />
        ))}
      </ol>
      <h2>Cautions</h2>
      {cautions.map((text) => (
        <p key={text} className="caution">
          {text}
        </p>
      ))}
      {notes.map((text) => (
        <p key={text} className="soft">
          <Fractions text={text} />
        </p>
      ))}
    </section>
  );
}

function Step({ step, setting }: { readonly step: LayoutStep; readonly setting: string | null }) {
  return (
    <li>
      {setting && (
        <span className="setting">
          <Fractions text={setting} />
        </span>
      )}
      <div className="stack">
        <strong>
          {step.cut === null ? '' : `Cut ${step.cut}: `}
          {step.title}
        </strong>
        <span>
          <Fractions text={step.text} />
        </span>
        {step.cautions.map((text) => (
          <span key={text} className="caution">
            <Fractions text={text} />
          </span>
        ))}
      </div>
    </li>
  );
}
