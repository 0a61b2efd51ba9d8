import { useEffect, useEffectEvent, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { pinch } from '../geometry/pinch.js';
import {
  clampView,
  type Extent,
  fitView,
  toPanelMm,
  type ViewTransform,
  zoomAt,
} from '../geometry/viewTransform.js';
import { keyStep } from './keyStep.js';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where the pointer is, in panel units. */
export interface PanelPoint {
  readonly xMm: number;
  readonly yMm: number;
}

export interface PanZoomOptions {
  readonly onTap?: (point: PanelPoint) => void;
  readonly onHover?: (point: PanelPoint | null) => void;
}

const tapReach = 6;

/** Pan and zoom by wheel, drag, pinch and keys over something of size `extent`. */
export function usePanZoom(extent: Extent, { onTap, onHover }: PanZoomOptions) {
  const surface = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<Extent>({ width: 0, height: 0 });
  const [moved, setMoved] = useState<ViewTransform | null>(null);
  const pointers = useRef(new Map<number, Point>());
  const start = useRef<Point | null>(null);

  const { width, height } = extent;
  // The same object while nothing moves: whoever draws under this view need not draw again.
  const view = useMemo(
    () =>
      moved
        ? clampView(moved, { width, height }, size)
        : fitView({ width, height }, size.width ? size : { width: 1, height: 1 }),
    [moved, width, height, size],
  );
  const latest = useRef(view);
  latest.current = view;

  const change = (next: ViewTransform) => {
    const kept = clampView(next, extent, size);
    const whole = fitView(extent, size);
    setMoved(kept.pxPerMm <= whole.pxPerMm * 1.001 ? null : kept);
  };

  useLayoutEffect(() => {
    const element = surface.current;
    if (!element) return;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);

  const wheel = useEffectEvent((event: WheelEvent) => {
    // At the whole view a plain scroll belongs to the page.
    if (!event.ctrlKey && event.deltaY > 0 && !moved) return;
    event.preventDefault();
    const box = surface.current!.getBoundingClientRect();
    const factor = Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0016));
    change(zoomAt(latest.current, factor, event.clientX - box.left, event.clientY - box.top));
  });
  useEffect(() => {
    const element = surface.current;
    if (!element) return;
    const listen = (event: WheelEvent) => wheel(event);
    element.addEventListener('wheel', listen, { passive: false });
    return () => element.removeEventListener('wheel', listen);
  }, []);

  const at = (event: React.PointerEvent): Point => {
    const box = surface.current!.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const toPanel = ({ x, y }: Point) => toPanelMm(latest.current, x, y);

  const handlers = {
    onPointerDown(event: React.PointerEvent) {
      if (event.button > 0) return;
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      pointers.current.set(event.pointerId, at(event));
      start.current = pointers.current.size === 1 ? at(event) : null;
    },
    onPointerMove(event: React.PointerEvent) {
      const now = at(event);
      onHover?.(toPanel(now));
      const before = pointers.current.get(event.pointerId);
      if (!before) return;
      const other = [...pointers.current].find(([id]) => id !== event.pointerId)?.[1];
      if (other) change(pinch(latest.current, [before, other], [now, other]));
      else {
        const { pxPerMm, x, y } = latest.current;
        change({ pxPerMm, x: x + now.x - before.x, y: y + now.y - before.y });
      }
      pointers.current.set(event.pointerId, now);
    },
    onPointerUp(event: React.PointerEvent) {
      pointers.current.delete(event.pointerId);
      const from = start.current;
      const to = at(event);
      start.current = null;
      if (from && Math.hypot(to.x - from.x, to.y - from.y) < tapReach) onTap?.(toPanel(to));
    },
    onPointerCancel(event: React.PointerEvent) {
      pointers.current.delete(event.pointerId);
      start.current = null;
    },
    onPointerLeave: () => onHover?.(null),
    onKeyDown(event: React.KeyboardEvent) {
      if (event.key === 'Enter' && event.target === event.currentTarget) {
        onTap?.(toPanel({ x: size.width / 2, y: size.height / 2 }));
        return;
      }
      const next = keyStep(event.key, latest.current, size);
      if (!next || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      change(next);
    },
  };
  const zoom = (factor: number) =>
    change(zoomAt(latest.current, factor, size.width / 2, size.height / 2));
  return { surface, size, view, handlers, zoom, whole: () => setMoved(null), isWhole: !moved };
}
