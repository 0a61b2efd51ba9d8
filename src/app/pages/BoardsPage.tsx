import { useState } from 'react';
import type { SeamResult } from '../../core/results/scoreResult.js';
import { levelOfVisibility } from '../../report/ramp/levelOfVisibility.js';
import { capitalise } from '../../report/words/capitalise.js';
import { countWord } from '../../report/words/countWord.js';
import { visibilityClause } from '../../report/words/visibilityClause.js';
import { changeSettings } from '../actions/changeSettings.js';
import { useBoards } from '../analysis/useBoards.js';
import { useJoints } from '../analysis/useJoints.js';
import { BoardStack } from '../canvas/BoardStack.js';
import { Answer } from '../parts/Answer.js';
import { BringButtons } from '../parts/BringButtons.js';
import { DistanceSlider } from '../parts/DistanceSlider.js';
import { LengthField } from '../parts/LengthField.js';
import { ScaleWords } from '../parts/ScaleWords.js';
import type { Photo, Project } from '../state/project.js';
import { useProject } from '../state/workbench.js';
import { BoardTools } from './BoardTools.js';
import { BringFirst } from './BringFirst.js';
import { PinFirst } from './PinFirst.js';

/** Boards laid edge to edge: which beside which, and which way round. */
export function BoardsPage() {
  const project = useProject();
  const photos = project?.photos.filter(({ scale }) => scale) ?? [];
  const unpinned = project?.photos.find(({ scale }) => !scale);
  if (!project || project.photos.length === 0) return <BringFirst />;
  if (photos.length === 0 && unpinned) return <PinFirst photo={unpinned} />;
  return <Boards project={project} photos={photos} />;
}

function Boards({
  project,
  photos,
}: {
  readonly project: Project;
  readonly photos: readonly Photo[];
}) {
  const { settings } = project;
  const boards = useBoards(photos);
  const joints = useJoints(photos, boards, settings);
  const [chosenId, setChosenId] = useState<string | null>(null);
  const chosen = photos.find(({ id }) => id === chosenId) ?? null;
  const left = project.photos.length - photos.length;
  return (
    <>
      <Answer text={headline(photos, joints)} busy={joints.includes(null)} />
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
              joints={joints}
              chosenId={chosenId}
              onChoose={setChosenId}
            />
          ) : (
            <p role="status">Reading the boards…</p>
          )}
          <ScaleWords />
        </div>
        <div className="stack">
          <BoardTools photos={photos} chosen={chosen} />
          <DistanceSlider settings={settings} />
          <div className="lengths">
            <LengthField
              label="Jointing takes from each edge"
              unit={settings.unit}
              mayBeZero
              mm={settings.jointMm}
              onChange={(jointMm) => changeSettings('Change the jointing', { jointMm })}
            />
          </div>
          <BringButtons short />
        </div>
      </div>
    </>
  );
}

function headline(photos: readonly Photo[], joints: readonly (SeamResult | null)[]): string {
  if (photos.length < 2) return 'One board. Bring the photos of the others in.';
  const untold = joints.filter((joint) => joint === null).length;
  if (untold > 0) return `Looking at the joints: ${joints.length - untold} of ${joints.length}…`;
  const worst = joints.reduce((a, b, index) => {
    return (b?.visibility.v ?? -1) > (joints[a]?.visibility.v ?? -1) ? index : a;
  }, 0);
  const word = levelOfVisibility(joints[worst]?.visibility.v ?? null)?.word;
  const count = `${capitalise(countWord(joints.length))} joint${joints.length === 1 ? '' : 's'}`;
  if (!word) return `${count}. The photos cannot tell how visible they would be.`;
  const between = `between ${photos[worst]!.name} and ${photos[worst + 1]!.name}`;
  return `${count}. The worst, ${between}, ${visibilityClause(word, false)}.`;
}
