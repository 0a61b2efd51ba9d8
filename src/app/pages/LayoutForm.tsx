import { changeSettings } from '../actions/changeSettings.js';
import { changePhoto } from '../actions/panelChanges.js';
import { frontPlaceOf } from '../analysis/frontPlaceOf.js';
import { Choice } from '../parts/Choice.js';
import { LengthField } from '../parts/LengthField.js';
import { UnitChoice } from '../parts/UnitChoice.js';
import type { FrontPlace, Photo, Settings } from '../state/project.js';

/** The front, the saw and the allowances. */
export function LayoutForm({
  photo,
  settings,
}: {
  readonly photo: Photo;
  readonly settings: Settings;
}) {
  const { unit } = settings;
  const place = frontPlaceOf(photo, settings);
  const set = (label: string, key: keyof Settings) => (mm: number) =>
    changeSettings(label, { [key]: mm });
  const move = (change: Partial<FrontPlace>) =>
    changePhoto(photo.id, 'Move the front', (draft) => {
      if (place) draft.frontPlace = { ...place, ...change };
    });
  return (
    <section className="stack" aria-label="Front and saw">
      <h2>Front and saw</h2>
      <UnitChoice />
      <div className="lengths">
        <LengthField
          label="Front along the grain"
          unit={unit}
          mm={settings.frontWidthMm}
          onChange={set('Change the front', 'frontWidthMm')}
        />
        <LengthField
          label="Front across the grain"
          unit={unit}
          mm={settings.frontHeightMm}
          onChange={set('Change the front', 'frontHeightMm')}
        />
        <LengthField
          label="Front from the left"
          unit={unit}
          mm={place?.xMm ?? null}
          onChange={(xMm) => move({ xMm })}
        />
        <LengthField
          label="Front from the top"
          unit={unit}
          mm={place?.yMm ?? null}
          onChange={(yMm) => move({ yMm })}
        />
        <LengthField
          label="Kerf of this saw"
          unit={unit}
          mm={settings.kerfMm}
          onChange={set('Change the kerf', 'kerfMm')}
        />
        <LengthField
          label="Dressed off each jointed edge"
          unit={unit}
          mayBeZero
          mm={settings.dressMm}
          onChange={set('Change the dressing', 'dressMm')}
        />
        <LengthField
          label="Trimmed off each edge of the front"
          unit={unit}
          mayBeZero
          mm={settings.trimMm}
          onChange={set('Change the trim', 'trimMm')}
        />
        <LengthField
          label="Thickness of the blank"
          exampleMm={22.225}
          unit={unit}
          mm={settings.roughMm}
          onChange={set('Change the thickness', 'roughMm')}
        />
        <LengthField
          label="Thickness finished"
          exampleMm={19.05}
          unit={unit}
          mm={settings.finishedMm}
          onChange={set('Change the thickness', 'finishedMm')}
        />
        <Choice
          label="End pieces"
          value={settings.endPieces}
          options={[
            ['stay', 'stay where they were'],
            ['slide', 'slide in by a kerf'],
          ]}
          onChange={(endPieces) => changeSettings('Change the end pieces', { endPieces })}
        />
        <Choice
          label="The front is"
          value={settings.frontWood}
          options={[
            ['same', 'the wood cut out'],
            ['contrasting', 'another wood'],
            ['veneered', 'veneered on a stable core'],
          ]}
          onChange={(frontWood) => changeSettings('Change the front', { frontWood })}
        />
        {unit === 'inch' && (
          <Choice
            label="The rule on the fence shows"
            value={String(settings.ruleMarks) as '16' | '32' | '64'}
            options={[
              ['16', 'sixteenths'],
              ['32', 'thirty-seconds'],
              ['64', 'sixty-fourths'],
            ]}
            onChange={(marks) =>
              changeSettings('Change the rule', { ruleMarks: Number(marks) as 16 | 32 | 64 })
            }
          />
        )}
      </div>
    </section>
  );
}
