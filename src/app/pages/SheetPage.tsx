import { capitalise } from '../../report/words/capitalise.js';
import { gapOf } from '../analysis/gapOf.js';
import { layoutOf } from '../analysis/layoutOf.js';
import { usePanel } from '../analysis/usePanel.js';
import { Answer } from '../parts/Answer.js';
import { PhotoRow } from '../parts/PhotoRow.js';
import type { Photo, Project } from '../state/project.js';
import { useShownPhoto } from '../state/useShownPhoto.js';
import { useProject } from '../state/workbench.js';
import { AsCutPart } from './AsCutPart.js';
import { BringFirst } from './BringFirst.js';
import { CutList } from './CutList.js';
import { GapPart } from './GapPart.js';
import { LayoutForm } from './LayoutForm.js';
import { LayoutPicture } from './LayoutPicture.js';
import { PinFirst } from './PinFirst.js';
import { SheetActions } from './SheetActions.js';

/** The numbers for the saw, the gap to leave, and a sheet to print. */
export function SheetPage() {
  const photo = useShownPhoto();
  const project = useProject();
  if (!photo || !project) return <BringFirst />;
  if (!photo.scale) return <PinFirst photo={photo} />;
  return <Sheet photo={photo} project={project} />;
}

function Sheet({ photo, project }: { readonly photo: Photo; readonly project: Project }) {
  const panel = usePanel(photo);
  const { settings } = project;
  const answer = layoutOf(photo, settings);
  const { gap, problem } = gapOf(project.gap, settings);
  const layout = answer?.layout ?? null;
  return (
    <>
      <Answer
        text={
          capitalise(answer?.problem?.text ?? '') ||
          headline(layout?.cuts.length ?? 0, layout?.safety.canBeCut)
        }
      />
      {answer?.problem?.hint && <p className="soft">{capitalise(answer.problem.hint)}.</p>}
      {layout?.safety.problems.map((text) => (
        <p key={text} className="caution">
          {text}
        </p>
      ))}
      <div className="bench">
        <div className="stack">
          {panel ? (
            <LayoutPicture photo={photo} settings={settings} panel={panel} layout={layout} />
          ) : (
            <p role="status">Squaring the panel up…</p>
          )}
          {layout && <CutList layout={layout} />}
          {layout && <AsCutPart project={project} layout={layout} />}
        </div>
        <div className="stack">
          <LayoutForm photo={photo} settings={settings} />
          <GapPart project={project} gap={gap} problem={problem} />
          {layout && <SheetActions project={project} layout={layout} gap={gap} panel={panel} />}
        </div>
      </div>
      <PhotoRow />
    </>
  );
}

function headline(cuts: number, canBeCut: boolean | undefined): string {
  if (canBeCut === false) return 'Not on the saw as it stands: see why below.';
  return `${cuts} cuts: the rips from one jointed edge, the crosscuts from one squared end.`;
}
