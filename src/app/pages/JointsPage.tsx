import { useGrain } from '../analysis/useGrain.js';
import { usePanel } from '../analysis/usePanel.js';
import { useScore } from '../analysis/useScore.js';
import { PhotoRow } from '../parts/PhotoRow.js';
import { WorkingBar } from '../parts/WorkingBar.js';
import type { Photo, Project } from '../state/project.js';
import { useShownPhoto } from '../state/useShownPhoto.js';
import { useProject } from '../state/workbench.js';
import { BringFirst } from './BringFirst.js';
import { PinFirst } from './PinFirst.js';
import { ScoredPanel } from './ScoredPanel.js';

/** The score of a finished glue-up. */
export function JointsPage() {
  const photo = useShownPhoto();
  const project = useProject();
  if (!photo || !project) return <BringFirst />;
  if (!photo.scale) return <PinFirst photo={photo} />;
  return <Joints key={photo.id} photo={photo} project={project} />;
}

function Joints({ photo, project }: { readonly photo: Photo; readonly project: Project }) {
  const panel = usePanel(photo);
  const { score, fresh, ask } = useScore(photo, project.settings);
  const grain = useGrain(photo, fresh);
  return (
    <>
      {panel ? (
        <ScoredPanel
          photo={photo}
          project={project}
          panel={panel}
          score={score}
          fresh={fresh}
          ask={ask}
          grain={grain}
        />
      ) : (
        <p role="status">Squaring the panel up…</p>
      )}
      {!panel && <WorkingBar />}
      <PhotoRow />
    </>
  );
}
