import { useState } from 'react';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { capitalise } from '../../report/words/capitalise.js';
import { countWord } from '../../report/words/countWord.js';
import { visibilityClause } from '../../report/words/visibilityClause.js';
import { changeSettings } from '../actions/changeSettings.js';
import { type Arrangement, useArrangement } from '../analysis/useArrangement.js';
import { useBoards } from '../analysis/useBoards.js';
import { BoardStack } from '../canvas/BoardStack.js';
import { Answer } from '../parts/Answer.js';
import { BringButtons } from '../parts/BringButtons.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { LengthField } from '../parts/LengthField.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import type { Photo, Project } from '../state/project.js';
import { useProject } from '../state/workbench.js';
import { BoardAccount } from './BoardAccount.js';
import { BoardRules } from './BoardRules.js';
import { BoardTools } from './BoardTools.js';
import { BringFirst } from './BringFirst.js';
import { PinFirst } from './PinFirst.js';

/** Boards laid edge to edge: which beside which, and which way round. */
export function BoardsPage() {
  const project = useProject();
  const pinned = project?.photos.filter(({ scale }) => scale) ?? [];
  const isBack = ({ backOf }: Photo) => pinned.some(({ id }) => id === backOf);
  const isEnd = ({ id }: Photo) => pinned.some(({ endId }) => endId === id);
  const photos = pinned.filter((photo) => !isBack(photo) && !isEnd(photo));
  const backs = new Map(pinned.filter(isBack).map((photo) => [photo.backOf!, photo]));
  const unpinned = project?.photos.find(({ scale }) => !scale);
  if (!project || project.photos.length === 0) return <BringFirst />;
  if (photos.length === 0 && unpinned) return <PinFirst photo={unpinned} />;
  return <Boards project={project} photos={photos} backs={backs} />;
}

function Boards({
  project,
  photos,
  backs,
}: {
  readonly project: Project;
  readonly photos: readonly Photo[];
  /** Photos of the other faces, by the board's own photo. */
  readonly backs: ReadonlyMap<string, Photo>;
}) {
  const { settings } = project;
  const boards = useBoards([...photos, ...backs.values()]);
  const arrangement = useArrangement(photos, backs, boards, project.boardPairs, settings);
  const { result, fresh, reading, findBest } = arrangement;
  const joints = (fresh && result?.joints) || photos.slice(1).map(() => null);
  const [chosenId, setChosenId] = useState<string | null>(null);
  const chosen = photos.find(({ id }) => id === chosenId) ?? null;
  const left = project.photos.filter(({ scale }) => !scale).length;
  return (
    <>
      <Answer text={headline(photos, arrangement)} busy={!fresh && photos.length > 1} />
      {left > 0 && (
        <p className="soft">
          {capitalise(countWord(left))} more {left === 1 ? 'photo is' : 'photos are'} not pinned yet
          and cannot be laid here.
        </p>
      )}
      <div className="bench">
        <div className="stack">
          {boards ? (
            <BoardStack
              photos={photos}
              boards={boards}
              backs={backs}
              mostSlideMm={settings.boardSpareMm / 2}
              joints={joints}
              chosenId={chosenId}
              onChoose={setChosenId}
            />
          ) : (
            <p role="status">Reading the boards…</p>
          )}
          <ScaleWords />
        </div>
        <div className="stack tools">
          <div className="working">
            {reading ? (
              <>
                <span role="status">{capitalise(reading.what)}</span>
                <progress value={reading.fraction} max={1} aria-label="Reading the boards" />
              </>
            ) : (
              <button
                type="button"
                className="main"
                disabled={!fresh || photos.length < 2}
                onClick={findBest}
              >
                Find the best order
              </button>
            )}
          </div>
          <BoardTools
            photos={photos}
            backs={backs}
            pairs={project.boardPairs}
            chosen={chosen}
            settings={settings}
          />
          <BoardRules settings={settings} />
          <DistanceSlider settings={settings} />
          <div className="lengths">
            <LengthField
              label="Jointing takes from each edge"
              unit={settings.unit}
              mayBeZero
              mm={settings.jointMm}
              onChange={(jointMm) => changeSettings('Change the jointing', { jointMm })}
            />
            <LengthField
              label="Length to spare for sliding"
              unit={settings.unit}
              mayBeZero
              mm={settings.boardSpareMm}
              onChange={(boardSpareMm) =>
                changeSettings('Change the length to spare', { boardSpareMm })
              }
            />
          </div>
          <BringButtons short />
        </div>
        <div className="stack account">
          {fresh && result && <BoardAccount {...{ project, photos, backs, boards, result }} />}
        </div>
      </div>
    </>
  );
}

function headline(photos: readonly Photo[], { result, fresh, reading }: Arrangement): string {
  if (photos.length < 2) return 'One board. Bring the photos of the others in.';
  if (!result || !fresh)
    return reading ? 'Reading every joint the boards could make…' : 'One moment…';
  const { joints, laid } = result;
  const worst = joints.reduce((a, b, index) => {
    return (b.v ?? -1) > (joints[a]?.v ?? -1) ? index : a;
  }, 0);
  const word = levelOfVisibility(joints[worst]?.v ?? null)?.word;
  const many = `${capitalise(countWord(joints.length))} joint${joints.length === 1 ? '' : 's'}`;
  const count = { byHand: many, asGrown: 'Laid as they grew', leastSeen: 'Laid to show least' }[
    laid
  ];
  if (!word) return `${count}. The photos cannot tell how visible they would be.`;
  const between = `between ${photos[worst]!.name} and ${photos[worst + 1]!.name}`;
  return `${count}. The worst${laid === 'byHand' ? '' : ' joint'}, ${between}, ${visibilityClause(word, false)}.`;
}
