import { decidesText } from '../../report/compare/decidesText.js';
import { imagineBoard } from '../actions/candidateChanges.js';
import { goTo } from '../actions/openProject.js';
import { type CandidateBoard, candidateBoards } from '../analysis/candidateBoards.js';
import type { CandidateReading } from '../analysis/candidateReading.js';
import { type Candidate, rankCandidates } from '../analysis/rankCandidates.js';
import { movesShare, stockOf } from '../analysis/stockOf.js';
import { useCandidatePanels } from '../analysis/useCandidatePanels.js';
import { useCandidates } from '../analysis/useCandidates.js';
import { useReadEnds } from '../analysis/useReadEnds.js';
import type { PanelOnShelf } from '../images/shelf.js';
import { Answer } from '../parts/Answer.js';
import { BringButtons } from '../parts/BringButtons.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import { WorkingBar } from '../parts/WorkingBar.js';
import { lengthUnitsOf } from '../state/lengthUnitsOf.js';
import type { Project } from '../state/project.js';
import { changeProject, useProject } from '../state/workbench.js';
import { BringFirst } from './BringFirst.js';
import { CandidateCard } from './CandidateCard.js';
import { CandidateForm } from './CandidateForm.js';
import { CandidateReport } from './CandidateReport.js';
import { candidateHeadline } from './candidateHeadline.js';
import { EndChoice } from './EndChoice.js';
import { ImaginedControls } from './ImaginedControls.js';
import { PinFirst } from './PinFirst.js';

/** Panels side by side: which one loses least to the cut, how each is sawn and what it moves. */
export function CandidatesPage() {
  const project = useProject();
  const unpinned = project?.photos.find(({ scale }) => !scale);
  if (!project || project.photos.length === 0) return <BringFirst />;
  const boards = candidateBoards(project);
  if (boards.length === 0 && unpinned) return <PinFirst photo={unpinned} />;
  return <Candidates project={project} boards={boards} />;
}

interface CandidatesProps {
  readonly project: Project;
  readonly boards: readonly CandidateBoard[];
}

function Candidates({ project, boards }: CandidatesProps) {
  const { settings } = project;
  const { readings, goOn } = useCandidates(boards, settings);
  const byFront = settings.candidatesFor === 'front';
  const panels = useCandidatePanels(boards);
  const ends = useReadEnds(project.photos);
  const ranked = rankCandidates(boards, readings, byFront);
  const stocks = ranked.map((candidate) => stockOf(candidate, project));
  const left = readings.filter(isWaiting(byFront)).length;
  const widestMm = Math.max(...[...panels.values()].map(({ panel }) => panel.widthMm), 1);
  const firstPanel = boards[0] && panels.get(boards[0].id);
  const decidesOf = (k: number) => {
    const other = k === 0 ? 1 : k - 1;
    const { decides } = ranked[k]!;
    if (left > 0 || !decides) return '';
    const share = movesShare(stocks[k]!, stocks[other]!);
    return decidesText({
      ...{ rank: k + 1, decides, otherName: namedInside(ranked[other]!.board), movesShare: share },
    });
  };
  const isDone = left === 0 && stocks.every(Boolean) && panels.size === boards.length;
  return (
    <>
      <Answer text={candidateHeadline(ranked, left, byFront)} busy={left > 0} />
      {goOn ? (
        <div className="working">
          <span role="status">Stopped. What is read so far stays.</span>
          <button type="button" onClick={goOn}>
            Go on
          </button>
        </div>
      ) : isDone ? (
        <div className="working">
          <span className="soft">{rankedBy(byFront)}</span>
        </div>
      ) : (
        <WorkingBar />
      )}
      <div className="bench with-form">
        <CandidateForm project={project} />
        <ol className="candidates">
          {ranked.map((candidate, k) => {
            const { board } = candidate;
            const panel = panels.get(board.id);
            if (!panel) return null;
            return (
              <CandidateCard
                key={board.id}
                {...{ candidate, panel, byFront }}
                rank={left === 0 ? k + 1 : null}
                decides={decidesOf(k)}
                stock={stocks[k]!}
                share={panel.panel.widthMm / widestMm}
                units={lengthUnitsOf(settings.unit)}
              >
                {board.imagined && <ImaginedControls board={board.imagined} unit={settings.unit} />}
                {board.photo && (
                  <>
                    <EndChoice photo={board.photo} ends={ends} withSide={byFront} />
                    <button
                      type="button"
                      onClick={() => placeFront(candidate, byFront)}
                      aria-label={`Place a front on it: ${board.name}`}
                    >
                      Place a front on it
                    </button>
                  </>
                )}
              </CandidateCard>
            );
          })}
        </ol>
        <div className="stack tools">
          <DistanceSlider settings={settings} />
          <ScaleWords />
          {firstPanel && (
            <button type="button" onClick={() => imagineBoard(sizeOf(firstPanel))}>
              Add a board as it would be sawn
            </button>
          )}
          {ends.length === 0 && (
            <p className="soft">
              A face seldom tells how a board is sawn. Bring a photo of its end in and read it under
              End grain: then it can be named here.
            </p>
          )}
          {isDone && <CandidateReport {...{ project, ranked, stocks, panels }} />}
          <BringButtons short />
        </div>
      </div>
    </>
  );
}

/** A drawn board is as large as the first candidate. */
const sizeOf = ({ panel: { widthMm, heightMm } }: PanelOnShelf) => ({ widthMm, heightMm });

/** A board's name inside a sentence. */
const namedInside = ({ name, imagined }: CandidateBoard) => (imagined ? `the ${name}` : name);

const rankedBy = (byFront: boolean) =>
  byFront
    ? 'Ranked by all the joints and gaps of the front where it is best taken from; then by what a typical rip would show.'
    : 'Ranked by what a typical rip would show: half of all that could be cut show less, half more.';

/** Takes a candidate to the rip; a front that was sought lies where it was found. */
function placeFront({ board, front }: Candidate, byFront: boolean): void {
  const place = byFront ? front?.place : null;
  changeProject(place ? 'Place the front on another photo' : 'Show another photo', (draft) => {
    draft.shownPhotoId = board.id;
    const shown = draft.photos.find(({ id }) => id === board.id);
    if (shown && place) shown.frontPlace = { xMm: place.xMm, yMm: place.yMm };
  });
  goTo('rip');
}

const isWaiting =
  (byFront: boolean) =>
  ({ curve, front }: CandidateReading) =>
    curve === null || (byFront && front === null);
