import { useEffect, useState } from 'react';
import type { CornersPx } from '../../core/image/photoScale.js';
import { goTo } from '../actions/openProject.js';
import { pinPanel } from '../actions/panelChanges.js';
import { guessCorners } from '../analysis/guessCorners.js';
import { usePhotoPicture } from '../analysis/usePhotoPicture.js';
import { PinStage } from '../canvas/PinStage.js';
import { isFairQuad } from '../geometry/isFairQuad.js';
import { PhotoRow } from '../parts/PhotoRow.js';
import { writeLength } from '../parts/readLength.js';
import { UnitChoice } from '../parts/UnitChoice.js';
import type { Photo } from '../state/project.js';
import { useShownPhoto } from '../state/useShownPhoto.js';
import { useProject } from '../state/workbench.js';
import { BringFirst } from './BringFirst.js';
import { draftOf, frameCorners, type PinDraft, scaleOf, turnedCorners } from './pinDraft.js';
import { ScaleForm } from './ScaleForm.js';

/** Where the panel lies in the photo and how large it really is. */
export function PinPage() {
  const photo = useShownPhoto();
  if (!photo) return <BringFirst />;
  return <PinPhoto key={photo.id + JSON.stringify(photo.scale)} photo={photo} />;
}

function PinPhoto({ photo }: { readonly photo: Photo }) {
  const picture = usePhotoPicture(photo.imageId);
  const [draft, setDraft] = useState<PinDraft>(() => draftOf(photo));
  const [guess, setGuess] = useState<'looking' | 'found' | 'none' | 'moved'>(
    photo.scale ? 'moved' : 'looking',
  );
  useEffect(() => {
    if (photo.scale) return;
    let dropped = false;
    guessCorners(photo.imageId).then((corners) => {
      if (dropped) return;
      setGuess((now) => (now === 'looking' ? (corners ? 'found' : 'none') : now));
      if (corners) setDraft((now) => (now.touched ? now : { ...now, corners }));
    });
    return () => {
      dropped = true;
    };
  }, [photo.imageId, photo.scale]);

  const project = useProject();
  const unit = project?.settings.unit ?? 'inch';
  const last = lastSize(project?.photos ?? []);
  const movePin = (corners: CornersPx) => {
    setGuess('moved');
    setDraft({ ...draft, corners, touched: true });
  };
  const scale = scaleOf(draft, photo);
  const crossed = draft.way === 'corners' && !isFairQuad(draft.corners);
  const take = () => {
    if (!scale || crossed) return;
    if (!pinPanel(photo.id, scale)) goTo('joints');
  };
  return (
    <>
      <h1>{headline[draft.way]}</h1>
      <p className="soft" role="status">
        {crossed
          ? 'The pins cross each other: put them at the four corners, in order.'
          : draft.way === 'corners'
            ? guessWords[guess]
            : 'The photo must have been taken square on for this.'}
      </p>
      <div className="bench">
        {picture ? (
          <PinStage
            photo={photo}
            drawable={picture}
            draft={draft}
            onCorners={movePin}
            onDraft={setDraft}
          />
        ) : (
          <p role="status">Reading the photo…</p>
        )}
        <div className="stack">
          {draft.way === 'corners' && (
            <div className="row">
              <button
                type="button"
                onClick={() => movePin(frameCorners(photo.widthPx, photo.heightPx, 0))}
              >
                The panel fills the photo
              </button>
              <button type="button" onClick={() => movePin(turnedCorners(draft.corners))}>
                Turn it a quarter
              </button>
              <p className="soft">The grain must run along the edge marked ‘top’.</p>
            </div>
          )}
          <ScaleForm draft={draft} onDraft={setDraft} />
          {draft.way === 'corners' && draft.widthMm === null && last && (
            <div className="row">
              <button type="button" onClick={() => setDraft({ ...draft, ...last })}>
                As large as the last: {writeLength(last.widthMm, unit)} by{' '}
                {writeLength(last.heightMm, unit)}
              </button>
            </div>
          )}
          <UnitChoice />
          <div className="row">
            <button type="button" className="main" disabled={!scale || crossed} onClick={take}>
              This is the panel
            </button>
          </div>
          {!scale && <p className="soft">{missingWords[draft.way]}</p>}
          <PhotoRow />
        </div>
      </div>
    </>
  );
}

/** Boards of one batch are often of one size. */
function lastSize(photos: readonly Photo[]): { widthMm: number; heightMm: number } | null {
  const scale = photos.findLast((each) => each.scale?.kind === 'size')?.scale;
  return scale?.kind === 'size' ? { widthMm: scale.widthMm, heightMm: scale.heightMm } : null;
}

const headline = {
  corners: 'Put a pin on each corner of the panel.',
  known: 'Put the two pins on a distance you know.',
} as const;

const missingWords = {
  corners: 'Give the real length and width of what lies between the pins.',
  known: 'Give the real distance between the two pins.',
} as const;

const guessWords = {
  looking: 'Looking for the panel in the photo…',
  found: 'This is a first guess from the photo: check each corner.',
  none: 'No outline stood out in the photo: drag the pins to the corners, or say that the panel fills it.',
  moved: 'Drag the pins, or choose one and use the arrow keys.',
} as const;
