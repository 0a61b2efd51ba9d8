import type { EndgrainResult } from '../../core/results/endgrainResult.js';
import { themes } from '../../report/draw/themes.js';
import { angleStrip } from '../../report/endgrain/angleStrip.js';
import { cutPatterns } from '../../report/endgrain/cutLegend.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import { Drawing } from './Drawing.js';

const prefix = 'end-strip';
/** What the strip under a picture has room for. */
const tallPx = 66;

/** The ring angle across the width, under the photo at the same x. */
export function EndStrip({
  end,
  frame,
}: {
  readonly end: EndgrainResult;
  readonly frame: ScoreFrame;
}) {
  const { piece } = angleStrip(end, 2, frame, themes.bright, prefix, tallPx);
  return (
    <svg aria-hidden="true">
      <Drawing svg={`<defs>${cutPatterns(prefix)}</defs>${piece.svg}`} />
    </svg>
  );
}
