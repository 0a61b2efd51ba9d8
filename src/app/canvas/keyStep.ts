import { type Extent, fitView, type ViewTransform, zoomAt } from '../geometry/viewTransform.js';

const stepPx = 60;

/** The view after a key: arrows move, + and - zoom, 0 shows the whole; null for any other key. */
export function keyStep(key: string, view: ViewTransform, screen: Extent): ViewTransform | null {
  const zoomed = (factor: number) => zoomAt(view, factor, screen.width / 2, screen.height / 2);
  switch (key) {
    case 'ArrowLeft':
      return { ...view, x: view.x + stepPx };
    case 'ArrowRight':
      return { ...view, x: view.x - stepPx };
    case 'ArrowUp':
      return { ...view, y: view.y + stepPx };
    case 'ArrowDown':
      return { ...view, y: view.y - stepPx };
    case '+':
    case '=':
      return zoomed(1.4);
    case '-':
      return zoomed(1 / 1.4);
    case '0':
      return fitView({ width: 1e6, height: 1e6 }, screen);
    default:
      return null;
  }
}
