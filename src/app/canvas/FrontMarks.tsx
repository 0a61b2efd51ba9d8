import { hatchPattern } from '../../report/draw/hatchPattern.js';
import { levelPath } from '../../report/draw/levelPath.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import type { ScoreFrame } from '../../report/score/scoreFrame.js';
import type { JudgedSegment } from '../worker/frontMessages.js';
import { Drawing } from './Drawing.js';

const hatchId = 'front-hatch';
const bandPx = 9;

export interface FrontMarksProps {
  readonly segments: readonly JudgedSegment[];
  readonly frame: ScoreFrame;
}

/** Each joint and reveal round the front as a band of its level, outside the wood that is lost. */
export function FrontMarks({ segments, frame }: FrontMarksProps) {
  const svg = segments
    .map(({ kind, edge, etaAMm, etaBMm, fromMm, toMm, v }) => {
      const level = levelOfVisibility(v);
      const thickPx = bandPx * (level?.thickness ?? 0.6);
      const lengthPx = (toMm - fromMm) * frame.scale;
      const path = levelPath(level?.shape ?? 'solid', 0, lengthPx, thickPx);
      const fill = level?.colour ?? `url(#${hatchId})`;
      const outerMm =
        edge === 'upper' || edge === 'left' ? Math.min(etaAMm, etaBMm) : Math.max(etaAMm, etaBMm);
      const at = outerMm * frame.scale;
      const from = fromMm * frame.scale;
      const { x, y } = frame.panel;
      const place =
        kind === 'rip'
          ? `translate(${x + from} ${y + at}) scale(1 ${edge === 'upper' ? 1 : -1}) translate(0 -3)`
          : `translate(${x + at} ${y + from}) rotate(90) scale(1 ${edge === 'left' ? -1 : 1}) translate(0 -3)`;
      return `<g transform="${place}"><path d="${path}" fill="none" stroke="#fff" stroke-opacity="0.85" stroke-width="4"/><path d="${path}" fill="${fill}" stroke="#161616" stroke-width="1.2"/></g>`;
    })
    .join('');
  return <Drawing svg={`<defs>${hatchPattern(hatchId)}</defs>${svg}`} />;
}
