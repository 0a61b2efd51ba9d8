import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { ArrangedJoint } from '../../core/results/arrangeResult.js';
import { cutInMiddle } from '../../report/words/cutInMiddle.js';
import { moveBoard } from '../actions/boardChanges.js';
import type { PanelOnShelf } from '../images/shelf.js';
import type { Photo } from '../state/project.js';
import { useProject } from '../state/workbench.js';
import { JointRail } from './JointRail.js';

export interface BoardStackProps {
  readonly photos: readonly Photo[];
  readonly boards: ReadonlyMap<string, PanelOnShelf>;
  /** Photos of the other faces, by the board's own photo. */
  readonly backs: ReadonlyMap<string, Photo>;
  /** Boards are slid by no more than this, mm. */
  readonly mostSlideMm: number;
  /** The joint under each board but the last. */
  readonly joints: readonly (ArrangedJoint | null)[];
  readonly chosenId: string | null;
  readonly onChoose: (id: string) => void;
}

/** The boards edge to edge at one scale, each joint judged beside its line. */
export function BoardStack({
  photos,
  boards,
  backs,
  mostSlideMm,
  joints,
  chosenId,
  onChoose,
}: BoardStackProps) {
  const order = useProject()?.photos ?? [];
  const stack = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  const drag = useRef<{ id: string; overId: string; gesture: string } | null>(null);
  useLayoutEffect(() => {
    const element = stack.current!;
    const measure = () => setWidthPx(element.clientWidth);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const panels = photos.map(({ id }) => boards.get(id)!.panel);
  const slideOf = ({ slideMm }: Photo) => Math.max(-mostSlideMm, Math.min(mostSlideMm, slideMm));
  const reach = panels.map(({ widthMm }, index) => widthMm + 2 * Math.abs(slideOf(photos[index]!)));
  const scale = widthPx / Math.max(1, ...reach);
  const shown = (photo: Photo) =>
    boards.get((photo.backUp && backs.get(photo.id)?.id) || photo.id) ?? boards.get(photo.id)!;
  const heights = panels.map(({ heightMm }) => heightMm * scale);
  const over = (clientY: number) => {
    const top = stack.current!.getBoundingClientRect().top;
    let below = clientY - top;
    const index = heights.findIndex((height) => (below -= height) < 0);
    return photos[index < 0 ? photos.length - 1 : index]!;
  };
  const letGo = () => {
    drag.current = null;
  };
  return (
    <div className="panel-frame with-rail">
      <div className="rail">
        <JointRail joints={joints} heights={heights} />
      </div>
      <div
        className="board-stack"
        ref={stack}
        onPointerDown={({ clientY }) => {
          const { id } = over(clientY);
          drag.current = { id, overId: id, gesture: crypto.randomUUID() };
        }}
        onPointerMove={({ clientY, buttons, currentTarget, pointerId }) => {
          if (!drag.current || buttons === 0) return;
          const place = over(clientY);
          const known = place.id === drag.current.overId;
          drag.current.overId = place.id;
          if (known || place.id === drag.current.id) return;
          // Not before something moves, or a mere tap would never reach its board.
          currentTarget.setPointerCapture(pointerId);
          onChoose(drag.current.id);
          moveBoard(drag.current.id, order.indexOf(place), drag.current.gesture);
        }}
        onPointerUp={letGo}
        onPointerCancel={letGo}
      >
        {photos.map((photo, index) => (
          <button
            key={photo.id}
            type="button"
            className="board"
            aria-pressed={photo.id === chosenId}
            aria-label={`${photo.name}, ${index + 1} from the top${photo.turned ? ', turned end for end' : ''}`}
            style={{
              height: heights[index],
              width: panels[index]!.widthMm * scale,
              left: slideOf(photo) * scale,
            }}
            onClick={() => onChoose(photo.id)}
          >
            <BoardPicture board={shown(photo)} turned={photo.turned} />
            {/* A name larger than its board would hide the next one. */}
            <span className="board-name" hidden={heights[index]! < 22}>
              {cutInMiddle(
                photo.name,
                Math.max(8, Math.floor((panels[index]!.widthMm * scale) / 9)),
              )}
              {photo.turned ? ' ↻' : ''}
              {photo.backUp && backs.has(photo.id) ? ', other face' : ''}
              {photo.boardPlace ? `, kept at the ${photo.boardPlace}` : ''}
            </span>
          </button>
        ))}
      </div>
    </div>
  );
}

function BoardPicture({ board, turned }: { board: PanelOnShelf; turned: boolean }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const target = canvas.current;
    if (!target) return;
    const { small } = board.drawable;
    target.width = small.width;
    target.height = small.height;
    const drawing = target.getContext('2d');
    if (!drawing) return;
    if (turned) drawing.setTransform(-1, 0, 0, -1, small.width, small.height);
    drawing.drawImage(small, 0, 0);
  }, [board, turned]);
  return <canvas ref={canvas} />;
}
