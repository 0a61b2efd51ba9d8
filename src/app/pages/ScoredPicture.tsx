import { useState } from 'react';
import type { GrainCell } from '../../core/results/grainResult.js';
import type { LengthUnits } from '../../report/words/lengthUnits.js';
import type { PlacedSeam } from '../../report/words/placedSeam.js';
import { applyTool } from '../actions/applyTool.js';
import { moveSeam, placedIdOf } from '../actions/panelChanges.js';
import { GrainMarks } from '../canvas/GrainMarks.js';
import { LeftOutMarks } from '../canvas/LeftOutMarks.js';
import { PanelSurface } from '../canvas/PanelSurface.js';
import { SeamEnds } from '../canvas/SeamEnds.js';
import { SeamMarks } from '../canvas/SeamMarks.js';
import { SeamRail } from '../canvas/SeamRail.js';
import { SeamStrip } from '../canvas/SeamStrip.js';
import type { PanelPoint } from '../canvas/usePanZoom.js';
import { WorstMarks } from '../canvas/WorstMarks.js';
import { nearestSeam } from '../geometry/nearestSeam.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { readingAlong, readingOn } from './readingAt.js';
import type { Tool } from './tools.js';

export interface ScoredPictureProps {
  readonly photo: Photo;
  readonly panel: PanelOnShelf;
  readonly placed: readonly PlacedSeam[];
  readonly chosen: PlacedSeam | null;
  readonly cells: readonly GrainCell[];
  readonly units: LengthUnits;
  readonly headline: string;
  readonly tool: Tool;
  readonly moving: boolean;
}

/** The panel with its joints, the rail beside it, the strip under it, and what a place says. */
export function ScoredPicture(props: ScoredPictureProps) {
  const { photo, panel, placed, chosen, cells, units, headline, tool, moving } = props;
  const layers = useWorkbench((state) => state.layers);
  const [at, setAt] = useState<PanelPoint | null>(null);
  const [alongMm, setAlongMm] = useState<number | null>(null);
  const { widthMm, heightMm } = panel.panel;

  const tap = ({ xMm, yMm }: PanelPoint) => {
    if (applyTool(tool, photo.id, { width: widthMm, height: heightMm }, xMm, yMm)) return;
    setAt({ xMm, yMm });
    const near = nearestSeam(placed, xMm, yMm);
    if (!near) return;
    useWorkbench.setState({ chosenSeamId: near.placed.seam.id });
    setAlongMm(near.alongMm);
  };
  const near = at ? nearestSeam(placed, at.xMm, at.yMm) : null;
  const reading = near
    ? readingAlong(near.placed, near.alongMm, units)
    : at
      ? readingOn(at.xMm, at.yMm, cells, units)
      : chosen && alongMm !== null
        ? readingAlong(chosen, alongMm, units)
        : '';
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
        marks={(view) => (
          <>
            {layers.grain && <GrainMarks cells={cells} view={view} />}
            <LeftOutMarks patches={photo.leftOut} view={view} />
            {layers.seams && (
              <SeamMarks seams={placed} view={view} chosenId={chosen?.seam.id ?? null} />
            )}
            {layers.worst && (
              <WorstMarks seams={placed.map(({ seam }) => seam)} view={view} units={units} />
            )}
          </>
        )}
        handles={
          moving && chosen
            ? (view) => (
                <SeamEnds
                  line={chosen.seam.line}
                  view={view}
                  onMoved={(to) => {
                    const { line } = chosen.seam;
                    const from = { placedId: placedIdOf(photo, line), line };
                    moveSeam(photo.id, from, to, crypto.randomUUID());
                  }}
                />
              )
            : undefined
        }
        rail={placed.length > 0 ? (view) => <SeamRail seams={placed} view={view} /> : undefined}
        strip={
          chosen
            ? (view) => (
                <SeamStrip
                  seam={chosen.seam}
                  view={view}
                  panelWidthMm={widthMm}
                  atMm={near?.placed === chosen ? near.alongMm : alongMm}
                  onAt={(mm) => {
                    setAt(null);
                    setAlongMm(mm);
                  }}
                  label={`How visible the ${chosen.name} is along its length`}
                  spoken={alongMm === null ? '' : readingAlong(chosen, alongMm, units)}
                />
              )
            : undefined
        }
        corner={chosen ? chosen.name : ''}
      />
      <p className="readout">{reading || 'Tap a joint, or run along the strip under it.'}</p>
    </div>
  );
}
