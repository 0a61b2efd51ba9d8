import type { GapResult } from '../../core/results/gapResult.js';
import { findSpecies } from '../../core/shop/movement/findSpecies.js';
import { speciesTable } from '../../core/shop/movement/speciesTable.js';
import { parseClimate } from '../../core/units/parseClimate.js';
import { describeGap } from '../../report/sheet/describeGap.js';
import { changeGap } from '../actions/changeSettings.js';
import { Choice } from '../parts/Choice.js';
import { Fractions } from '../parts/Fractions.js';
import { LengthField } from '../parts/LengthField.js';
import { TextField } from '../parts/TextField.js';
import type { Project } from '../state/project.js';

const names = speciesTable.map(({ name }) => name);

export interface GapPartProps {
  readonly project: Project;
  readonly gap: GapResult | null;
  readonly problem: string;
}

/** The gap that survives summer: what is known of wood and air, and the answer. */
export function GapPart({ project: { gap: asked, settings }, gap, problem }: GapPartProps) {
  const lines = gap ? describeGap(gap) : [];
  return (
    <section className="stack" aria-label="Gap round the front">
      <h2>Gap round the front</h2>
      <div className="lengths">
        <TextField
          label="Wood"
          value={asked.species}
          suggestions={names}
          check={findSpecies}
          onChange={(species) => changeGap({ species })}
        />
        <Choice
          label="Cut"
          value={asked.ringAngle}
          options={[
            ['flatsawn', 'flatsawn'],
            ['rift', 'rift'],
            ['quartered', 'quartered'],
          ]}
          onChange={(ringAngle) => changeGap({ ringAngle })}
        />
        <TextField
          label="Air when it is fitted"
          value={asked.shop}
          check={parseClimate}
          onChange={(shop) => changeGap({ shop })}
        />
        <TextField
          label="Air at the other end of the year"
          value={asked.home}
          check={parseClimate}
          onChange={(home) => changeGap({ home })}
        />
        <Choice
          label="Round the front"
          value={asked.surround}
          options={[
            ['framed', 'an opening that stays'],
            ['solid', 'a solid panel of the same wood'],
          ]}
          onChange={(surround) => changeGap({ surround })}
        />
        <Choice
          label="The gap belongs"
          value={asked.place}
          options={[
            ['top', 'above the front'],
            ['bottom', 'below the front'],
            ['split', 'half above, half below'],
          ]}
          onChange={(place) => changeGap({ place })}
        />
        <LengthField
          label="Must remain when it is widest"
          unit={settings.unit}
          mayBeZero
          mm={asked.revealMm}
          onChange={(revealMm) => changeGap({ revealMm })}
        />
      </div>
      {problem && <p className="caution">{problem}</p>}
      {lines.map((line, index) => (
        // The source names report numbers with a slash, which are no fractions.
        <p key={line} className={index > 3 ? 'soft' : ''}>
          {line.includes('Wood Handbook') ? line : <Fractions text={line} />}
        </p>
      ))}
    </section>
  );
}
