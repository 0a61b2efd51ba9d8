import type { CuppingResult, EndgrainResult } from '../../core/results/endgrainResult.js';
import { joinWords } from '../words/joinWords.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { smallLengthText } from '../words/smallLengthText.js';
import { cutWords } from './cutWords.js';
import { roughText } from './roughText.js';

/** What the end of a board says: the answer as a sentence, then the rest line by line. */
export function describeEndgrain(
  result: EndgrainResult,
  units: LengthUnits,
): { readonly headline: string; readonly lines: readonly string[] } {
  const { cut, ringAngle, notes } = result;
  if (!cut || ringAngle.length === 0) {
    return { headline: 'Cannot tell how this board was sawn.', lines: notes };
  }
  const lines = [
    angleLine(result),
    pithLine(result, units),
    ...(result.ringWidthMm.median === null
      ? []
      : [`The rings are about ${smallLengthText(result.ringWidthMm.median, units)} wide.`]),
    ...(result.cupping ? [cuppingLine(result.cupping, result.panel, units)] : []),
    ...notes,
  ];
  return { headline: headlineOf(cut), lines };
}

function headlineOf(cut: NonNullable<EndgrainResult['cut']>): string {
  const parts = cutWords
    .map(({ name }) => ({ name, share: cut[name] }))
    .filter(({ share }) => share >= 0.005)
    .sort((a, b) => b.share - a.share);
  if (parts.length === 1) return `${capital(parts[0]!.name)} across the whole width.`;
  const texts = parts.map(({ name, share }) => `${Math.round(100 * share)} % ${name}`);
  return `Of the width, ${joinWords(texts)}.`;
}

const capital = (text: string) => text[0]!.toUpperCase() + text.slice(1);

function angleLine({ ringAngle }: EndgrainResult): string {
  const middle = ringAngle[ringAngle.length >> 1]!;
  const angles = ringAngle.map((ring) => ring.angleDeg);
  const [least, most] = [Math.min(...angles), Math.max(...angles)];
  if (most - least < 1)
    return `The rings stand at ${middle.angleDeg.toFixed(0)} deg to the wide face.`;
  const range = `from ${least.toFixed(0)} to ${most.toFixed(0)} deg across it`;
  return `The rings stand at ${middle.angleDeg.toFixed(0)} deg to the wide face in the middle of the width, ${range}.`;
}

function pithLine({ pith, pithAtLeastMm, panel }: EndgrainResult, units: LengthUnits): string {
  if (!pith) {
    // Rounded, it must not say more than is known.
    return pithAtLeastMm === null || pithAtLeastMm > 1e5
      ? 'Where the pith lay cannot be told.'
      : `The pith lay at least ${roughText(0.95 * pithAtLeastMm, 0.25 * pithAtLeastMm, units)} away.`;
  }
  const { xMm, yMm } = pith;
  const inside = xMm >= 0 && xMm <= panel.widthMm && yMm >= 0 && yMm <= panel.heightMm;
  const away = (mm: number) => roughText(mm, pith.seMm, units);
  const give = `give or take ${away(pith.seMm)}`;
  const aside =
    xMm < 0
      ? `${away(-xMm)} off the left edge`
      : xMm > panel.widthMm
        ? `${away(xMm - panel.widthMm)} off the right edge`
        : `${away(xMm)} from the left`;
  const depth =
    yMm < 0
      ? `${away(-yMm)} above the top face`
      : yMm > panel.heightMm
        ? `${away(yMm - panel.heightMm)} below the bottom face`
        : `${away(yMm)} below the top face`;
  if (inside) return `The pith is in the board, ${aside} and ${depth}, ${give}.`;
  const far = Math.hypot(xMm - panel.widthMm / 2, yMm - panel.heightMm / 2);
  return `The pith lay outside the board, about ${away(far)} from the middle of this end, ${give}: ${aside} and ${depth}.`;
}

/** Typical C_T - C_R, per 1 % (median of the species table's rows), for the word only. */
const usualDifference = 0.0012;

function cuppingLine(
  { hollow, faceDifference, hollowMm }: CuppingResult,
  { widthMm, heightMm }: EndgrainResult['panel'],
  units: LengthUnits,
): string {
  const size = hollowMm ?? (faceDifference * 4 * usualDifference * widthMm ** 2) / (8 * heightMm);
  if (!hollow || size < 0.1) {
    return 'It stays about flat as it dries: both faces shrink nearly alike.';
  }
  const how = size < 0.4 ? 'a little' : size < 1 ? 'clearly' : 'strongly';
  const much =
    hollowMm === null ? '' : `, ${smallLengthText(hollowMm, units)} for 4 % less moisture`;
  return `As it dries it cups ${how}: the ${hollow} face, away from the heart, goes hollow${much}.`;
}
