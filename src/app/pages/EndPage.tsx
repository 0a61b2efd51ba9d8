import { useState } from 'react';
import { themes } from '../../report/draw/themes.js';
import { describeEndgrain } from '../../report/endgrain/describeEndgrain.js';
import { endgrainHtml } from '../../report/endgrain/endgrainHtml.js';
import { endMarks } from '../../report/endgrain/endMarks.js';
import { layTangent, liftTangents } from '../actions/tangentChanges.js';
import { useEndgrain } from '../analysis/useEndgrain.js';
import { usePanel } from '../analysis/usePanel.js';
import { Drawing } from '../canvas/Drawing.js';
import { EndStrip } from '../canvas/EndStrip.js';
import { PanelSurface } from '../canvas/PanelSurface.js';
import { TangentMarks } from '../canvas/TangentMarks.js';
import type { PanelPoint } from '../canvas/usePanZoom.js';
import { panelDataUrl } from '../images/panelDataUrl.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { Answer } from '../parts/Answer.js';
import { CutColours } from '../parts/CutColours.js';
import { Fractions } from '../parts/Fractions.js';
import { PhotoRow } from '../parts/PhotoRow.js';
import { ReportButtons } from '../parts/ReportButtons.js';
import { WorkingBar } from '../parts/WorkingBar.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { useShownPhoto } from '../state/useShownPhoto.js';
import { useProject } from '../state/workbench.js';
import { BringFirst } from './BringFirst.js';
import { PinFirst } from './PinFirst.js';

/** A board's end: where the pith lay, how the rings stand to the face, how it was sawn. */
export function EndPage() {
  const photo = useShownPhoto();
  const project = useProject();
  if (!photo || !project) return <BringFirst />;
  if (!photo.scale) return <PinFirst photo={photo} />;
  return <End key={photo.id} photo={photo} project={project} />;
}

function End({ photo, project }: { readonly photo: Photo; readonly project: Project }) {
  const panel = usePanel(photo);
  const { end, fresh, ask } = useEndgrain(photo);
  const units = lengthUnitsOf(project.settings.unit);
  const words = end ? describeEndgrain(end, units) : null;
  return (
    <>
      <Answer
        text={words?.headline ?? (ask ? 'Not read yet.' : 'Reading the rings…')}
        busy={!fresh}
      />
      {ask && (
        <div className="row">
          <button type="button" className="main" onClick={ask}>
            Read it now
          </button>
        </div>
      )}
      {panel ? (
        <EndPicture photo={photo} panel={panel} end={end} label={words?.headline ?? ''} />
      ) : (
        <p role="status">Squaring the end up…</p>
      )}
      {!fresh && <WorkingBar />}
      {words && (
        <ul className="said">
          {words.lines.map((line) => (
            <li key={line}>
              <Fractions text={line} />
            </li>
          ))}
        </ul>
      )}
      {end && panel && (
        <ReportButtons
          name={`${project.name} end`}
          answer={end}
          page={async () =>
            endgrainHtml(end, { ...units, photoHref: await panelDataUrl(panel.drawable) })
          }
        />
      )}
      <PhotoRow />
    </>
  );
}

interface EndPictureProps {
  readonly photo: Photo;
  readonly panel: PanelOnShelf;
  readonly end: ReturnType<typeof useEndgrain>['end'];
  readonly label: string;
}

function EndPicture({ photo, panel, end, label }: EndPictureProps) {
  const [laying, setLaying] = useState(false);
  const [from, setFrom] = useState<PanelPoint | null>(null);
  const { widthMm, heightMm } = panel.panel;
  const tap = ({ xMm, yMm }: PanelPoint) => {
    if (!laying) return;
    if (!from) {
      setFrom({ xMm, yMm });
      return;
    }
    setFrom(null);
    if (Math.hypot(xMm - from.xMm, yMm - from.yMm) < 1) return;
    layTangent(photo.id, { x1Mm: from.xMm, y1Mm: from.yMm, x2Mm: xMm, y2Mm: yMm });
    setLaying(false);
  };
  const shown = end && end.ringAngle.length > 0 ? end : null;
  return (
    <div className="stack">
      <PanelSurface
        widthMm={widthMm}
        heightMm={heightMm}
        drawable={panel.drawable}
        label={`Photo of the end. ${label}`}
        placing={laying}
        onTap={tap}
        marks={(frame) => (
          <>
            {shown && <Drawing svg={endMarksOn(shown, frame)} />}
            <TangentMarks tangents={photo.ringTangents} from={from} frame={frame} />
          </>
        )}
        strip={shown ? (frame) => <EndStrip end={shown} frame={frame} /> : undefined}
      />
      {shown && <CutColours />}
      <div className="row">
        <button type="button" aria-pressed={laying} onClick={() => setLaying(!laying)}>
          Lay a line along a ring
        </button>
        {photo.ringTangents.length > 0 && (
          <button type="button" onClick={() => liftTangents(photo.id)}>
            Lift the lines, read the photo
          </button>
        )}
      </div>
      <p className="soft" role="status">
        {laying
          ? from
            ? 'Tap a second place on the same ring.'
            : 'Tap a place on a ring.'
          : 'For an end too rough to read: lay a line along one ring, or one near each edge.'}
      </p>
    </div>
  );
}

/** Rings and pith on the photo; an off-photo pith is told in the words below it. */
function endMarksOn(
  end: NonNullable<EndPictureProps['end']>,
  frame: Parameters<typeof endMarks>[1],
): string {
  return endMarks(end, frame, { units: 'mm' }, themes.bright, 'end-page').svg;
}
