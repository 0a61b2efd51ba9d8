import { ripLossMm } from '../../core/rip/frontCut.js';
import { changePhoto } from '../actions/panelChanges.js';
import { keepFrontInside } from '../analysis/frontPlaceOf.js';
import type { TriedFront } from '../analysis/useFrontBench.js';
import { FrontHandle } from '../canvas/FrontHandle.js';
import { FrontMarks } from '../canvas/FrontMarks.js';
import { PanelSurface } from '../canvas/PanelSurface.js';
import { RipRail } from '../canvas/RipRail.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { FrontPlace, Photo, Settings } from '../state/project.js';

export interface TriedPictureProps {
  readonly photo: Photo;
  readonly settings: Settings;
  readonly panel: PanelOnShelf;
  readonly place: FrontPlace;
  readonly tried: TriedFront;
}

/** The uncut panel: the cost of every rip beside it, the front dragged over it. */
export function TriedPicture({ photo, settings, panel, place, tried }: TriedPictureProps) {
  const { widthMm, heightMm } = panel.panel;
  const half = ripLossMm(settings) / 2;
  const ripsMm = [place.yMm - half, place.yMm + settings.frontHeightMm + half];
  const { curve, answer } = tried;
  const move = (to: FrontPlace, gesture: string) =>
    changePhoto(
      photo.id,
      'Move the front',
      (draft) => {
        draft.frontPlace = { ...keepFrontInside(to, { widthMm, heightMm }, settings) };
      },
      gesture,
    );
  return (
    <PanelSurface
      widthMm={widthMm}
      heightMm={heightMm}
      drawable={panel.drawable}
      label="The uncut panel with the front on it"
      marks={(frame) => answer && <FrontMarks segments={answer.segments} frame={frame} />}
      handles={(frame) => (
        <FrontHandle
          place={place}
          widthMm={settings.frontWidthMm}
          heightMm={settings.frontHeightMm}
          frame={frame}
          onMove={move}
        />
      )}
      rail={(frame) => (curve ? <RipRail curve={curve} frame={frame} ripsMm={ripsMm} /> : null)}
    />
  );
}
