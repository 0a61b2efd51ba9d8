import { segmentName } from '../../report/forecast/segmentName.js';
import { clauseOfV } from '../../report/forecast/wordOfV.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { visibilityClause } from '../../report/words/visibilityClause.js';
import { goTo } from '../actions/openProject.js';
import {
  type Candidate,
  type CandidateReading,
  rankCandidates,
} from '../analysis/rankCandidates.js';
import { useBoards } from '../analysis/useBoards.js';
import { useCandidates } from '../analysis/useCandidates.js';
import { Answer } from '../parts/Answer.js';
import { BringButtons } from '../parts/BringButtons.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Photo, Project } from '../state/project.js';
import { changeProject, useProject } from '../state/workbench.js';
import { BringFirst } from './BringFirst.js';
import { CandidateCard } from './CandidateCard.js';
import { CandidateForm } from './CandidateForm.js';
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
  const readings = useCandidates(photos, settings);
  const byFront = settings.candidatesFor === 'front';
  const panels = useBoards(photos);
  const ranked = rankCandidates(photos, readings, byFront);
  const left = readings.filter(isWaiting(byFront)).length;
  const widestMm = Math.max(...[...(panels?.values() ?? [])].map(({ panel }) => panel.widthMm), 1);
  const choose = ({ photo, front }: Candidate) => {
    const place = byFront ? front?.place : null;
    changeProject(place ? 'Place the front on another photo' : 'Show another photo', (draft) => {
      draft.shownPhotoId = photo.id;
      const shown = draft.photos.find(({ id }) => id === photo.id);
      if (shown && place) shown.frontPlace = { xMm: place.xMm, yMm: place.yMm };
    });
    goTo('rip');
  };
  return (
    <>
      <Answer text={headline(ranked, photos.length, left, byFront)} busy={left > 0} />
      <div className="bench with-form">
        <CandidateForm settings={settings} />
        <ol className="candidates">
          {panels &&
            ranked.map((candidate, index) => (
              <CandidateCard
                key={candidate.photo.id}
                candidate={candidate}
                rank={left === 0 ? index + 1 : null}
                board={panels.get(candidate.photo.id)!}
                share={panels.get(candidate.photo.id)!.panel.widthMm / widestMm}
                byFront={byFront}
                units={lengthUnitsOf(settings.unit)}
                onChoose={() => choose(candidate)}
              />
            ))}
        </ol>
        <div className="stack tools">
          <DistanceSlider settings={settings} />
          <p className="soft">
            {byFront
              ? 'Ranked by all the joints and gaps of the front where it is best taken from; then by what a typical rip would show.'
              : 'Ranked by what a typical rip would show: half of all that could be cut show less, half more.'}
          </p>
          <ScaleWords />
          <BringButtons short />
        </div>
      </div>
    </>
  );
}

const isWaiting =
  (byFront: boolean) =>
  ({ curve, front }: CandidateReading) =>
    curve === null || (byFront && front === null);

function headline(
  ranked: readonly Candidate[],
  count: number,
  left: number,
  byFront: boolean,
): string {
  if (count < 2 && !byFront) return 'One candidate. Bring the photos of the others in.';
  const what = byFront ? 'Trying every place for the front' : 'Trying every rip';
  if (left > 0) return `${what}: ${count - left} of ${count} panels…`;
  const [first] = ranked;
  if (byFront) return frontHeadline(first, count);
  const word = levelOfVisibility(first?.vMedian ?? null)?.word;
  if (!first || !word) return 'The photos cannot tell which panel would lose least.';
  return `${first.photo.name} loses least: a typical rip in it ${visibilityClause(word, false)}.`;
}

function frontHeadline(first: Candidate | undefined, count: number): string {
  const place = first?.front?.place;
  if (!first || !place) return 'The front can be taken from none of the candidates.';
  const { worst } = place;
  const look =
    (worst.v ?? 0) < 0.5
      ? 'every joint of the front disappears'
      : `the worst, the ${segmentName(worst)}, ${clauseOfV(worst.v)}`;
  return `${first.photo.name}${count > 1 ? ' loses least' : ''}: at the best place ${look}.`;
}
