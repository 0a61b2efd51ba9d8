import { changeProject, useProject } from '../state/workbench.js';

/** Inches with fractions, or millimetres, for the whole project. */
export function UnitChoice() {
  const unit = useProject()?.settings.unit ?? 'inch';
  const choose = (next: 'inch' | 'millimetre') =>
    changeProject('Change the unit', (draft) => {
      draft.settings.unit = next;
    });
  return (
    <fieldset className="row">
      <legend className="heard-only">Lengths in</legend>
      <button type="button" aria-pressed={unit === 'inch'} onClick={() => choose('inch')}>
        inches
      </button>
      <button
        type="button"
        aria-pressed={unit === 'millimetre'}
        onClick={() => choose('millimetre')}
      >
        mm
      </button>
    </fieldset>
  );
}
