import { useState } from 'react';
import type { GrainResult } from '../../core/results/grainResult.js';
import type { ScoreResult } from '../../core/results/scoreResult.js';
import { scoreHtml } from '../../report/html/scoreHtml.js';
import { headlineOfScore } from '../../report/words/headlineOfScore.js';
import { placeSeams } from '../../report/words/placeSeams.js';
import { panelDataUrl } from '../images/panelDataUrl.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { Answer } from '../parts/Answer.js';
import { Basis } from '../parts/Basis.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { LayerTicks } from '../parts/LayerTicks.js';
import { ReportButtons } from '../parts/ReportButtons.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import { SeamList } from '../parts/SeamList.js';
import { WorkingBar } from '../parts/WorkingBar.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { useWorkbench } from '../state/workbench.js';
import { HandTools } from './HandTools.js';
import { ScoredPicture } from './ScoredPicture.js';
import type { Tool } from './tools.js';

export interface ScoredPanelProps {
  readonly photo: Photo;
  readonly project: Project;
  readonly panel: PanelOnShelf;
  readonly score: ScoreResult | null;
  readonly fresh: boolean;
  readonly ask: (() => void) | null;
  readonly grain: GrainResult | null;
}

/** The answer as a sentence, the panel under it, and how to correct it beside it. */
export function ScoredPanel({ photo, project, panel, score, fresh, ask, grain }: ScoredPanelProps) {
  const [tool, setTool] = useState<Tool>('look');
  const [moving, setMoving] = useState(false);
  const chosenId = useWorkbench((state) => state.chosenSeamId);
  const units = lengthUnitsOf(project.settings.unit);
  const placed = score ? placeSeams(score) : [];
  const chosen = placed.find(({ seam }) => seam.id === chosenId) ?? worstOf(placed);
  const headline = score ? headlineOfScore(score, units) : '';
  return (
    <>
      <Answer
        text={headline || (ask ? 'Not scored yet.' : 'Looking at the joints…')}
        busy={!fresh}
      />
      <WorkingBar />
      {ask && (
        <div className="row">
          <button type="button" className="main" onClick={ask}>
            Score it now
          </button>
          {score && <span className="soft">What is shown is an older answer.</span>}
        </div>
      )}
      <div className="bench">
        <div className="stack">
          <ScoredPicture
            {...{ photo, panel, score, placed, chosen, grain, units, headline, tool, moving }}
            onUsed={() => setTool('look')}
          />
          <LayerTicks />
          <ScaleWords />
          <HandTools photo={photo} tool={tool} setTool={setTool} />
        </div>
        <div className="stack">
          <DistanceSlider settings={project.settings} />
          <SeamList
            {...{ placed, photo, units, moving, setMoving }}
            chosenId={chosen?.seam.id ?? null}
          />
          <Basis panel={panel} photo={photo} score={score} />
          {score && (
            <ReportButtons
              name={`${project.name} joints`}
              answer={score}
              page={async () =>
                scoreHtml(score, {
                  ...units,
                  title: project.name,
                  photoHref: await panelDataUrl(panel.drawable),
                  distanceMm: project.settings.distanceMm,
                  ...(grain ? { grain } : {}),
                })
              }
            />
          )}
        </div>
      </div>
    </>
  );
}

function worstOf(placed: ReturnType<typeof placeSeams>) {
  return (
    [...placed].sort((a, b) => (b.seam.visibility.v ?? 0) - (a.seam.visibility.v ?? 0))[0] ?? null
  );
}
