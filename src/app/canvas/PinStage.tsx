import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { CornersPx } from '../../core/image/photoScale.js';
import type { PointPx } from '../../core/image/pointPx.js';
import { type Extent, fitView } from '../geometry/viewTransform.js';
import type { Drawable } from '../images/drawableOf.js';
import type { PinDraft } from '../pages/pinDraft.js';
import type { Photo } from '../state/project.js';
import { drawPicture } from './drawPicture.js';
import { Magnifier } from './Magnifier.js';
import { Pin } from './Pin.js';

export interface PinStageProps {
  readonly photo: Photo;
  readonly drawable: Drawable;
  readonly draft: PinDraft;
  readonly onCorners: (corners: CornersPx) => void;
  readonly onDraft: (draft: PinDraft) => void;
}

const cornerNames = ['Top left', 'Top right', 'Bottom right', 'Bottom left'] as const;
const marginPx = 26;

/** The photo with its pins, and a magnifier while one is moved. */
export function PinStage({ photo, drawable, draft, onCorners, onDraft }: PinStageProps) {
  const stage = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [size, setSize] = useState<Extent>({ width: 0, height: 0 });
  const [moving, setMoving] = useState<PointPx | null>(null);
  useLayoutEffect(() => {
    const element = stage.current!;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const { widthPx, heightPx } = photo;
  const view = useMemo(
    () => fitView({ width: widthPx, height: heightPx }, size, marginPx),
    [widthPx, heightPx, size],
  );
  useEffect(() => {
    if (canvas.current && size.width) drawPicture(canvas.current, drawable, photo.widthPx, view);
  }, [drawable, photo.widthPx, view, size.width]);

  const toScreen = ({ x, y }: PointPx) => ({
    x: x * view.pxPerMm + view.x,
    y: y * view.pxPerMm + view.y,
  });
  const pins = draft.way === 'corners' ? draft.corners : draft.ends;
  const move = (index: number, to: PointPx) => {
    const inside = {
      x: Math.min(photo.widthPx, Math.max(0, to.x)),
      y: Math.min(photo.heightPx, Math.max(0, to.y)),
    };
    setMoving(inside);
    const next = pins.map((pin, at) => (at === index ? inside : pin));
    if (draft.way === 'corners') onCorners(next as unknown as CornersPx);
    else onDraft({ ...draft, ends: next as unknown as PinDraft['ends'] });
  };
  const outline = pins.map(toScreen);
  return (
    <div
      className="pin-stage"
      ref={stage}
      style={{ aspectRatio: `${photo.widthPx} / ${photo.heightPx}` }}
    >
      <canvas className="photo" ref={canvas} />
      <svg className="outline" aria-hidden="true">
        <polygon
          points={outline.map(({ x, y }) => `${x},${y}`).join(' ')}
          fill="none"
          stroke="#111"
          strokeWidth={4}
        />
        <polygon
          points={outline.map(({ x, y }) => `${x},${y}`).join(' ')}
          fill="none"
          stroke="#fff"
          strokeWidth={2}
        />
        {draft.way === 'corners' && <TopWord from={outline[0]!} to={outline[1]!} />}
      </svg>
      {pins.map((pin, index) => (
        <Pin
          // biome-ignore lint/suspicious/noArrayIndexKey: a pin is its place in the order
          key={index}
          name={
            draft.way === 'corners'
              ? `${cornerNames[index]!} pin`
              : `End ${index + 1} of the known distance`
          }
          at={pin}
          screen={toScreen(pin)}
          unitsPerScreenPx={1 / view.pxPerMm}
          onMove={(to) => move(index, to)}
          onHold={(held) => setMoving(held ? pin : null)}
        />
      ))}
      {moving && (
        <Magnifier drawable={drawable} at={moving} screen={toScreen(moving)} stage={size} />
      )}
    </div>
  );
}

/** Says which edge will be the panel's top, inside the outline and along that edge. */
function TopWord({ from, to }: { readonly from: PointPx; readonly to: PointPx }) {
  const deg = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const at = `translate(${(from.x + to.x) / 2} ${(from.y + to.y) / 2}) rotate(${deg})`;
  return (
    <text className="top-word" transform={at} y={20}>
      top
    </text>
  );
}
