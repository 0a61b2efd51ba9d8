import { useState } from 'react';
import { ripLossMm } from '../../core/rip/frontCut.js';
import { changePhoto } from '../actions/panelChanges.js';
import { keepFrontInside } from '../analysis/frontPlaceOf.js';
import type { TriedFront } from '../analysis/useFrontBench.js';
import { drawGlued } from '../canvas/drawGlued.js';
import { FrontHandle } from '../canvas/FrontHandle.js';
import { FrontMarks } from '../canvas/FrontMarks.js';
import { PanelSurface } from '../canvas/PanelSurface.js';
import { RipRail } from '../canvas/RipRail.js';
import { gluedPieces } from '../geometry/gluedPieces.js';
import type { ViewTransform } from '../geometry/viewTransform.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { FrontPlace, Photo, Settings } from '../state/project.js';

export interface TriedPictureProps {
  readonly photo: Photo;
  readonly settings: Settings;
  readonly panel: PanelOnShelf;
  readonly place: FrontPlace;
  readonly tried: TriedFront;
  readonly onHold: (held: boolean) => void;
}

/** The uncut panel: the cost of every rip beside it, the front dragged over it. */
export function TriedPicture({ photo, settings, panel, place, tried, onHold }: TriedPictureProps) {
  const { widthMm, heightMm } = panel.panel;
  const half = ripLossMm(settings) / 2;
  const ripsMm = [place.yMm - half, place.yMm + settings.frontHeightMm + half];
  const { curve, answer } = tried;
  const [glued, setGlued] = useState(0);
  const pieces = gluedPieces(
    { width: widthMm, height: heightMm },
    { ...place, widthMm: settings.frontWidthMm, heightMm: settings.frontHeightMm },
    settings,
    settings.endPieces === 'slide' ? 'close' : 'stay',
  );
  const overpaint = (canvas: HTMLCanvasElement, view: ViewTransform) =>
    drawGlued(canvas, panel.drawable, widthMm, pieces, view, glued);
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
    <>
      <PanelSurface
        widthMm={widthMm}
        heightMm={heightMm}
        drawable={panel.drawable}
        label="The uncut panel with the front on it"
        overpaint={glued > 0 ? overpaint : undefined}
        marks={(frame) =>
          answer && glued === 0 && <FrontMarks segments={answer.segments} frame={frame} />
        }
        handles={(frame) => (
          <FrontHandle
            place={place}
            widthMm={settings.frontWidthMm}
            heightMm={settings.frontHeightMm}
            frame={frame}
            onMove={move}
            onHold={onHold}
            faint={glued > 0}
          />
        )}
        rail={(frame) => (curve ? <RipRail curve={curve} frame={frame} ripsMm={ripsMm} /> : null)}
      />
      <label className="wipe">
        <span>Uncut</span>
        <input
          type="range"
          min={0}
          max={100}
          value={Math.round(100 * glued)}
          aria-label="How much of the panel is shown as glued, from the right"
          onChange={({ target }) => setGlued(Number(target.value) / 100)}
        />
        <span>As glued</span>
      </label>
    </>
  );
}
