import type { LayoutResult } from '../../core/results/layoutResult.js';
import { changePhoto } from '../actions/panelChanges.js';
import { frontPlaceOf, keepFrontInside } from '../analysis/frontPlaceOf.js';
import { panelSize } from '../analysis/panelSize.js';
import { CutMarks } from '../canvas/CutMarks.js';
import { FrontHandle } from '../canvas/FrontHandle.js';
import { PanelSurface } from '../canvas/PanelSurface.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { FrontPlace, Photo, Settings } from '../state/project.js';

export interface LayoutPictureProps {
  readonly photo: Photo;
  readonly settings: Settings;
  readonly panel: PanelOnShelf;
  readonly layout: LayoutResult | null;
}

/** The panel with its kerfs and pieces; the front is dragged to its place. */
export function LayoutPicture({ photo, settings, panel, layout }: LayoutPictureProps) {
  const { widthMm, heightMm } = panel.panel;
  const place = frontPlaceOf(photo, settings);
  const size = panelSize(photo);
  const move = (to: FrontPlace, gesture: string) => {
    if (!size) return;
    changePhoto(
      photo.id,
      'Move the front',
      (draft) => {
        draft.frontPlace = { ...keepFrontInside(to, size, settings) };
      },
      gesture,
    );
  };
  return (
    <PanelSurface
      widthMm={widthMm}
      heightMm={heightMm}
      drawable={panel.drawable}
      label="The panel with its cuts"
      marks={(frame) => layout && <CutMarks layout={layout} frame={frame} />}
      handles={(frame) =>
        place && (
          <FrontHandle
            place={place}
            widthMm={settings.frontWidthMm}
            heightMm={settings.frontHeightMm}
            frame={frame}
            onMove={move}
          />
        )
      }
    />
  );
}
