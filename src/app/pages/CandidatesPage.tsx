import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { visibilityClause } from '../../report/words/visibilityClause.js';
import { goTo } from '../actions/openProject.js';
import { type Candidate, rankCandidates } from '../analysis/rankCandidates.js';
import { useBoards } from '../analysis/useBoards.js';
import { useCurves } from '../analysis/useCurves.js';
import { Answer } from '../parts/Answer.js';
import { BringButtons } from '../parts/BringButtons.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { changeProject, useProject } from '../state/workbench.js';
import { BringFirst } from './BringFirst.js';
import { CandidateCard } from './CandidateCard.js';
import { PinFirst } from './PinFirst.js';

/** Panels side by side: which one loses least to the rip. */
export function CandidatesPage() {
  const project = useProject();
  const photos = project?.photos.filter(({ scale }) => scale) ?? [];
  const unpinned = project?.photos.find(({ scale }) => !scale);
  if (!project || project.photos.length === 0) return <BringFirst />;
  if (photos.length === 0 && unpinned) return <PinFirst photo={unpinned} />;
  return <Candidates project={project} photos={photos} />;
}

function Candidates({
  project,
  photos,
}: {
  readonly project: Project;
  readonly photos: readonly Photo[];
}) {
  const { settings } = project;
  const curves = useCurves(photos, settings);
  const panels = useBoards(photos);
  const ranked = rankCandidates(photos, curves);
  const left = curves.filter((curve) => curve === null).length;
  const widestMm = Math.max(...[...(panels?.values() ?? [])].map(({ panel }) => panel.widthMm), 1);
  const choose = (photo: Photo) => {
    changeProject('Show another photo', (draft) => {
      draft.shownPhotoId = photo.id;
    });
    goTo('rip');
  };
  return (
    <>
      <Answer text={headline(ranked, photos.length, left)} busy={left > 0} />
      <div className="bench">
        <ol className="candidates">
          {panels &&
            ranked.map((candidate, index) => (
              <CandidateCard
                key={candidate.photo.id}
                candidate={candidate}
                rank={left === 0 ? index + 1 : null}
                board={panels.get(candidate.photo.id)!}
                share={panels.get(candidate.photo.id)!.panel.widthMm / widestMm}
                units={lengthUnitsOf(settings.unit)}
                onChoose={() => choose(candidate.photo)}
              />
            ))}
        </ol>
        <div className="stack">
          <DistanceSlider settings={settings} />
          <p className="soft">
            Ranked by what the middle one of all rips across the panel would show, with the kerf and
            dressing of this project.
          </p>
          <ScaleWords />
          <BringButtons short />
        </div>
      </div>
    </>
  );
}

function headline(ranked: readonly Candidate[], count: number, left: number): string {
  if (count < 2) return 'One candidate. Bring the photos of the others in.';
  if (left > 0) return `Trying every rip: ${count - left} of ${count} panels…`;
  const [first] = ranked;
  const word = levelOfVisibility(first?.vMedian ?? null)?.word;
  if (!first || !word) return 'The photos cannot tell which panel would lose least.';
  return `${first.photo.name} loses least: a middling rip in it ${visibilityClause(word, false)}.`;
}
