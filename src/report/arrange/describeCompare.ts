import type { CompareResult } from '../../core/results/compareResult.js';
import { visibilityWord } from '../../core/visibility/visibilityWord.js';
import type { LengthUnits } from '../words/lengthUnits.js';
import { placeText } from '../words/placeText.js';

/** The candidates from best to worst, each in a sentence. */
export function describeCompare({ candidates }: CompareResult, units: LengthUnits): string[] {
  return candidates.map(({ rank, photo, vMedian, vBest, bestYMm }) => {
    if (vMedian === null || vBest === null || bestYMm === null) {
      return `${rank}. ${photo}: cannot tell, no rip could be forecast.`;
    }
    const usual = `a rip anywhere: ${visibilityWord(vMedian)} (V ${vMedian.toFixed(1)})`;
    const best = `best ${placeText(bestYMm, units)} from the top: ${visibilityWord(vBest)} (V ${vBest.toFixed(1)})`;
    return `${rank}. ${photo}: ${usual}; ${best}.`;
  });
}
