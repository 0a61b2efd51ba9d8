import { findSpecies } from '../../core/shop/movement/findSpecies.js';
import { speciesTable } from '../../core/shop/movement/speciesTable.js';
import { changeGap, changeSettings } from '../actions/changeSettings.js';
import { seasonWords } from '../analysis/stockOf.js';
import { Choice } from '../parts/Choice.js';
import { LengthField } from '../parts/LengthField.js';
import { TextField } from '../parts/TextField.js';
import type { Project } from '../state/project.js';

const woods = speciesTable.map(({ name }) => name);

/** What the candidates are wanted for, what the saw takes, and the wood that moves. */
export function CandidateForm({ project }: { readonly project: Project }) {
  const { settings, gap } = project;
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
        <TextField
          label="Wood"
          value={gap.species}
          suggestions={woods}
          check={findSpecies}
          onChange={(species) => changeGap({ species })}
        />
      </div>
      <p className="soft">{seasonWords(gap)}. The shop sheet keeps the air.</p>
    </section>
  );
}
