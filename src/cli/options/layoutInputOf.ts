import { SeamgrainError } from '../../core/errors.js';
import type { RuleStep } from '../../core/results/layoutResult.js';
import type { PieceMeasure } from '../../core/shop/layout/computeAsCut.js';
import type { FrontPlace, FrontWood, LayoutInput } from '../../core/shop/layout/layoutInput.js';
import { repeatFronts } from '../../core/shop/layout/repeatFronts.js';
import type { PointMm } from '../../core/units/parsePointsMm.js';
import type { SizeMm } from '../../core/units/parseSizeMm.js';

/** The options of `layoutOptions`, read. */
export interface LayoutOptions {
  readonly panel: SizeMm;
  readonly front: readonly SizeMm[];
  readonly at?: readonly PointMm[];
  readonly kerf: number;
  readonly dress: number;
  readonly trim: number;
  readonly trimEnds?: number;
  readonly face?: SizeMm;
  readonly column?: number;
  readonly row?: number;
  readonly between?: number;
  readonly slideLeft?: number;
  readonly slideRight?: number;
  readonly edge?: 'upper' | 'lower';
  readonly stop?: 'left' | 'right';
  readonly rule?: RuleStep;
  readonly thickness?: number;
  readonly finishedThickness?: number;
  readonly frontWood?: FrontWood;
  readonly asCut?: readonly PieceMeasure[];
}

/**
 * The layout that the options ask for.
 * @throws SeamgrainError wrongUsage where options do not go together
 */
export function layoutInputOf(options: LayoutOptions): LayoutInput {
  const { kerf, dress, trim, trimEnds, face, edge, stop, rule, frontWood } = options;
  const { slideLeft, slideRight } = options;
  return {
    panel: faceOf(options.panel),
    fronts: frontsOf(options),
    kerfMm: kerf,
    dressMm: dress,
    trimMm: trim,
    ...(trimEnds !== undefined && { trimEndsMm: trimEnds }),
    ...(face && { face: faceOf(face) }),
    ...((slideLeft !== undefined || slideRight !== undefined) && {
      endSlideMm: { leftMm: slideLeft ?? 0, rightMm: slideRight ?? 0 },
    }),
    ...(edge && { referenceEdge: `${edge} edge` as const }),
    ...(stop && { referenceEnd: `${stop} end` as const }),
    ...(rule && { rule }),
    ...(frontWood && { frontWood }),
    ...thicknessOf(options),
  };
}

function faceOf({ widthMm, heightMm }: SizeMm) {
  return { lengthMm: widthMm, widthMm: heightMm };
}

function frontsOf(options: LayoutOptions): FrontPlace[] {
  const { panel, front, at, column, row, kerf, dress, trim, trimEnds } = options;
  if (at && at.length !== front.length) {
    throw new SeamgrainError(
      'wrongUsage',
      `${front.length} fronts and ${at.length} places were given`,
      'give --at once for each --front',
    );
  }
  const bank = {
    rows: column ?? 1,
    columns: row ?? 1,
    railMm: options.between ?? 0,
    dividerMm: options.between ?? 0,
    kerfMm: kerf,
    dressMm: dress,
    trimMm: trim,
    trimEndsMm: trimEnds ?? trim,
  };
  return front.flatMap((size, index) => {
    const place = at?.[index] ?? { xMm: 0, yMm: 0 };
    const fronts = repeatFronts({ ...bank, first: { ...faceOf(size), ...place } });
    return at ? fronts : centred(fronts, panel);
  });
}

/** Moves a bank so that it has as much panel left as right, and above as below. */
function centred(fronts: readonly FrontPlace[], panel: SizeMm): FrontPlace[] {
  const right = Math.max(...fronts.map(({ xMm, lengthMm }) => xMm + lengthMm));
  const below = Math.max(...fronts.map(({ yMm, widthMm }) => yMm + widthMm));
  return fronts.map((front) => ({
    ...front,
    xMm: front.xMm + (panel.widthMm - right) / 2,
    yMm: front.yMm + (panel.heightMm - below) / 2,
  }));
}

function thicknessOf({ thickness, finishedThickness }: LayoutOptions): Partial<LayoutInput> {
  if (thickness === undefined && finishedThickness === undefined) return {};
  if (thickness === undefined || finishedThickness === undefined) {
    throw new SeamgrainError(
      'wrongUsage',
      'only one thickness was given',
      'give --thickness and --finished-thickness',
    );
  }
  return { thickness: { roughMm: thickness, finishedMm: finishedThickness } };
}
