import { changeSettings } from '../actions/changeSettings.js';
import { Choice } from '../parts/Choice.js';
import { LengthField } from '../parts/LengthField.js';
import type { Settings } from '../state/project.js';

/** What the candidates are wanted for, and what the saw takes. */
export function CandidateForm({ settings }: { readonly settings: Settings }) {
  const { unit } = settings;
  return (
    <section className="stack" aria-label="Front and saw">
      <Choice
        label="They are wanted for"
        value={settings.candidatesFor}
        options={[
          ['rip', 'a rip anywhere'],
          ['front', 'a front of this size'],
        ]}
        onChange={(candidatesFor) =>
          changeSettings('Change what candidates are for', { candidatesFor })
        }
      />
      <div className="lengths">
        {settings.candidatesFor === 'front' && (
          <>
            <LengthField
              label="Front along the grain"
              unit={unit}
              mm={settings.frontWidthMm}
              onChange={(frontWidthMm) =>
                changeSettings('Change the size of the front', { frontWidthMm })
              }
            />
            <LengthField
              label="Front across the grain"
              unit={unit}
              mm={settings.frontHeightMm}
              onChange={(frontHeightMm) =>
                changeSettings('Change the size of the front', { frontHeightMm })
              }
            />
          </>
        )}
        <LengthField
          label="Kerf of this saw"
          unit={unit}
          mayBeZero
          mm={settings.kerfMm}
          onChange={(kerfMm) => changeSettings('Change the kerf', { kerfMm })}
        />
        <LengthField
          label="Dressed off each edge"
          unit={unit}
          mayBeZero
          mm={settings.dressMm}
          onChange={(dressMm) => changeSettings('Change the dressing', { dressMm })}
        />
      </div>
    </section>
  );
}
