import type { GrainResult } from '../../core/results/grainResult.js';
import type { ScoreResult } from '../../core/results/scoreResult.js';
import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { themes } from '../../report/draw/themes.js';
import { grainStrokes } from '../../report/score/grainStrokes.js';
import { numberTag } from '../../report/score/numberTag.js';
import { pointOnTrack } from '../../report/score/pointOnTrack.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { seamBand } from '../../report/score/seamBand.js';
import { seamMarks } from '../../report/score/seamMarks.js';
import { seamTrack } from '../../report/score/seamTrack.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import type { Layers } from '../state/workbench.js';
import { Drawing } from './Drawing.js';

const hatchId = 'page-hatch';

export interface ScoreMarksProps {
  readonly score: ScoreResult | null;
  readonly grain: GrainResult | null;
  readonly placed: readonly PlacedSeam[];
  readonly frame: ScoreFrame;
  readonly units: LengthUnits;
  readonly layers: Layers;
}

/** What is drawn over the panel: joints beside their lines, worst places, grain strokes. */
export function ScoreMarks({ score, grain, placed, frame, units, layers }: ScoreMarksProps) {
  const seams =
    score && layers.seams && layers.worst
      ? seamMarks(score, placed, frame, units, themes.bright, hatchId)
      : null;
  const bands = layers.seams && !layers.worst ? bandsOnly(placed, frame) : '';
  const strokes = grain && layers.grain ? grainStrokes(grain, frame, seams?.taken ?? []) : '';
  return (
    <Drawing
      svg={`<defs>${hatchPattern(hatchId)}</defs>${strokes}${bands}${seams?.piece.svg ?? ''}`}
    />
  );
}

function bandsOnly(placed: readonly PlacedSeam[], frame: ScoreFrame): string {
  return placed
    .map(({ seam, number }) => {
      const track = seamTrack(seam.line, frame);
      const centre = pointOnTrack(track, 14, frame.gapPx + frame.bandPx / 2);
      return seamBand(seam, track, frame, hatchId) + numberTag(number, seam.found, centre, 8.5).svg;
    })
    .join('');
}
