import { useState } from 'react';
import { changePhoto } from '../actions/panelChanges.js';
import { frontPlaceOf } from '../analysis/frontPlaceOf.js';
import { useFrontBench } from '../analysis/useFrontBench.js';
import { usePanel } from '../analysis/usePanel.js';
import { Answer } from '../parts/Answer.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { ForecastButtons } from '../parts/ForecastButtons.js';
import { PhotoRow } from '../parts/PhotoRow.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { useShownPhoto } from '../state/useShownPhoto.js';
import { useProject } from '../state/workbench.js';
import { BestPlaces } from './BestPlaces.js';
import { BringFirst } from './BringFirst.js';
import { frontHeadline } from './frontWords.js';
import { LayoutForm } from './LayoutForm.js';
import { PinFirst } from './PinFirst.js';
import { SegmentList } from './SegmentList.js';
import { TriedPicture } from './TriedPicture.js';

/** Before ripping: what each cut would cost, and where the front should come from. */
export function RipPage() {
  const photo = useShownPhoto();
  const project = useProject();
  if (!photo || !project) return <BringFirst />;
  if (!photo.scale) return <PinFirst photo={photo} />;
  return <Rip key={photo.id} photo={photo} project={project} />;
}

function Rip({ photo, project }: { readonly photo: Photo; readonly project: Project }) {
  const { settings } = project;
  const panel = usePanel(photo);
  const place = frontPlaceOf(photo, settings);
  const [held, setHeld] = useState(false);
  const tried = useFrontBench(photo, panel, place, settings, held);
  const units = lengthUnitsOf(settings.unit);
  return (
    <>
      <Answer text={frontHeadline(tried.answer, units)} busy={!tried.fresh} />
      {tried.notes.map((note) => (
        <p key={note} className="caution">
          {note}
        </p>
      ))}
      <div className="bench">
        <div className="stack">
          {panel && place ? (
            <TriedPicture {...{ photo, settings, panel, place, tried }} onHold={setHeld} />
          ) : (
            <p role="status">Squaring the panel up…</p>
          )}
          <ScaleWords />
          <LayoutForm photo={photo} settings={settings} />
        </div>
        <div className="stack">
          <DistanceSlider settings={settings} />
          <BestPlaces
            tried={tried}
            units={units}
            onPlace={(to) =>
              changePhoto(photo.id, 'Move the front', (draft) => {
                draft.frontPlace = { ...to };
              })
            }
          />
          {tried.answer && <SegmentList answer={tried.answer} />}
          {panel && <ForecastButtons project={project} photo={photo} panel={panel} />}
        </div>
      </div>
      <PhotoRow />
    </>
  );
}
