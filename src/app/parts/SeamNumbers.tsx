import type { SeamResult } from '../../core/results/scoreResult.js';
import { endsOfLine } from '../../report/words/endsOfLine.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { smallLengthText } from '../../report/words/smallLengthText.js';
import { vanishingText } from '../../report/words/vanishingText.js';
import { Fractions } from './Fractions.js';

const untold = 'cannot tell';

/** A joint's numbers, each with its give or take, for whoever wants them. */
export function SeamNumbers({
  seam,
  runs,
  units,
}: {
  readonly seam: SeamResult;
  readonly runs: PlacedSeam['runs'];
  readonly units: LengthUnits;
}) {
  const { visibility, grain, offset, lost, colourStep, glueLine } = seam;
  const length = (mm: number | null, seMm: number | null = null) =>
    mm === null
      ? untold
      : `${smallLengthText(mm, units)}${seMm === null ? '' : ` ± ${smallLengthText(seMm, units)}`}`;
  const [back, on] = runs === 'along' ? ['to the left', 'to the right'] : ['up', 'down'];
  const slid = (mm: number | null) => (mm === null || mm === 0 ? '' : ` ${mm < 0 ? back : on}`);
  const { wedgeMm = null, wedgeSeMm = null } = lost;
  const wedge: readonly (readonly [string, string])[] =
    wedgeMm === null
      ? []
      : [
          [
            `More lost at the ${endsOfLine(runs)[wedgeMm > 0 ? 1 : 0]} end`,
            length(wedgeMm, wedgeSeMm),
          ],
        ];
  const rows: readonly (readonly [string, string])[] = [
    ['Visibility', visibility.v === null ? untold : `${visibility.v.toFixed(2)} × just visible`],
    [
      'Seen by',
      visibility.pSeen === null ? untold : `${Math.round(100 * visibility.pSeen)} in 100 people`,
    ],
    [
      'Vanishes from',
      visibility.vanishesAtMm === null ? '—' : vanishingText(visibility.vanishesAtMm, units),
    ],
    ['Lines step', length(offset.mm, offset.seMm)],
    [
      'Grain turns',
      grain.changeDeg === null
        ? untold
        : `${grain.changeDeg.toFixed(1)}°${grain.changeSeDeg === null ? '' : ` ± ${grain.changeSeDeg.toFixed(1)}°`}`,
    ],
    ['Width lost', `${length(lost.mm, lost.seMm)}${(lost.mm ?? 0) < 0 ? ' too much' : ''}`],
    [
      runs === 'along' ? 'Upper piece slid' : 'Left piece slid',
      `${length(lost.slideMm, lost.slideSeMm)}${slid(lost.slideMm)}`,
    ],
    ...wedge,
    ['Colour step', colourStep.deltaE00 === null ? untold : `ΔE ${colourStep.deltaE00.toFixed(1)}`],
    ['Glue line', length(glueLine.widthMm)],
    ['False alarm', seam.p === null ? 'placed by hand' : chanceText(seam.p)],
  ];
  return (
    <>
      <dl className="numbers">
        {rows.map(([name, value]) => (
          <Row key={name} name={name} value={value} />
        ))}
      </dl>
      {seam.notes.map((note) => (
        <p key={note} className="soft" style={{ padding: '0 12px 8px' }}>
          {note}
        </p>
      ))}
    </>
  );
}

function Row({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>
        <Fractions text={value} />
      </dd>
    </>
  );
}

function chanceText(p: number): string {
  if (p < 0.001) return 'less than 1 in 1000';
  return p < 0.1 ? `${(1000 * p).toFixed(0)} in 1000` : `${(100 * p).toFixed(0)} in 100`;
}
