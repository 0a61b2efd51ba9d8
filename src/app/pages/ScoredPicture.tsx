import { useState } from 'react';
import type { GrainResult } from '../../core/results/grainResult.js';
import type { LineMm, ScoreResult } from '../../core/results/scoreResult.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { applyTool } from '../actions/applyTool.js';
import { moveSeam, placedIdOf } from '../actions/panelChanges.js';
import { LeftOutMarks } from '../canvas/LeftOutMarks.js';
import { PanelSurface } from '../canvas/PanelSurface.js';
import { ScoreMarks } from '../canvas/ScoreMarks.js';
import { SeamEnds } from '../canvas/SeamEnds.js';
import { SeamRail } from '../canvas/SeamRail.js';
import { SeamStrip } from '../canvas/SeamStrip.js';
import type { PanelPoint } from '../canvas/usePanZoom.js';
import { nearestSeam } from '../geometry/nearestSeam.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { Fractions } from '../parts/Fractions.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { readingAlong, readingOn } from './readingAt.js';
import type { Tool } from './tools.js';

export interface ScoredPictureProps {
  readonly photo: Photo;
  readonly panel: PanelOnShelf;
  readonly score: ScoreResult | null;
  readonly placed: readonly PlacedSeam[];
  readonly chosen: PlacedSeam | null;
  readonly grain: GrainResult | null;
  readonly units: LengthUnits;
  readonly headline: string;
  readonly tool: Tool;
  readonly moving: boolean;
  /** The tool has done what it does. */
  readonly onUsed: () => void;
}

/** The panel with its joints, the rail beside it, the strip under it, and what a place says. */
export function ScoredPicture(props: ScoredPictureProps) {
  const { photo, panel, score, placed, chosen, grain, units, headline, tool, moving, onUsed } =
    props;
  const layers = useWorkbench((state) => state.layers);
  const [at, setAt] = useState<PanelPoint | null>(null);
  const [alongMm, setAlongMm] = useState<number | null>(null);
  const { widthMm, heightMm } = panel.panel;

  const tap = ({ xMm, yMm }: PanelPoint) => {
    if (applyTool(tool, photo.id, { width: widthMm, height: heightMm }, xMm, yMm)) {
      onUsed();
      return;
    }
    setAt({ xMm, yMm });
    const near = nearestSeam(placed, xMm, yMm);
    if (!near) return;
    useWorkbench.setState({ chosenSeamId: near.placed.seam.id });
    setAlongMm(near.alongMm);
  };
  const moveChosen = (to: LineMm) => {
    if (!chosen) return;
    const { line } = chosen.seam;
    moveSeam(photo.id, { placedId: placedIdOf(photo, line), line }, to, crypto.randomUUID());
  };
  const near = at ? nearestSeam(placed, at.xMm, at.yMm) : null;
  const reading = near
    ? readingAlong(near.placed, near.alongMm, units)
    : at
      ? readingOn(at.xMm, at.yMm, grain?.cells ?? [], units)
      : chosen && alongMm !== null
        ? readingAlong(chosen, alongMm, units)
        : 'Tap a joint, or run along the strip under the panel.';
  const strip = chosen?.runs === 'along' ? chosen : null;
  return (
    <div className="stack">
      <PanelSurface
        widthMm={widthMm}
        heightMm={heightMm}
        drawable={panel.drawable}
        label={`Photo of the panel. ${headline}`}
        placing={tool !== 'look'}
        onTap={tap}
        onHover={setAt}
        marks={(frame) => (
          <>
            <ScoreMarks {...{ score, grain, placed, frame, units, layers }} />
            <LeftOutMarks patches={photo.leftOut} frame={frame} />
          </>
        )}
        handles={
          moving && chosen
            ? (frame) => <SeamEnds line={chosen.seam.line} frame={frame} onMoved={moveChosen} />
            : undefined
        }
        rail={
          placed.length > 0 ? (frame) => <SeamRail {...{ placed, chosen, frame }} /> : undefined
        }
        strip={
          strip
            ? (frame) => (
                <SeamStrip
                  chosen={strip}
                  frame={frame}
                  atMm={near?.placed === strip ? near.alongMm : alongMm}
                  onAt={(mm) => {
                    setAt(null);
                    setAlongMm(mm);
                  }}
                  label={`How visible the ${strip.name} is along its length`}
                  spoken={alongMm === null ? '' : readingAlong(strip, alongMm, units)}
                />
              )
            : undefined
        }
        corner={strip ? `${strip.number} ${strip.name}` : ''}
      />
      <p className="readout">
        <Fractions text={reading} />
      </p>
    </div>
  );
}
