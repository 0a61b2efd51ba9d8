/** Where the panel lies on the screen: screen = panelMm * pxPerMm + (x, y), CSS pixels. */
export interface ViewTransform {
  readonly pxPerMm: number;
  readonly x: number;
  readonly y: number;
}

/** A size in one unit on both axes. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

const deepestZoom = 60;

/** The view that shows the whole panel, centred, with `marginPx` around it. */
export function fitView(panelMm: Extent, screenPx: Extent, marginPx = 0): ViewTransform {
  const pxPerMm = Math.min(
    Math.max(1, screenPx.width - 2 * marginPx) / panelMm.width,
    Math.max(1, screenPx.height - 2 * marginPx) / panelMm.height,
  );
  return {
    pxPerMm,
    x: (screenPx.width - panelMm.width * pxPerMm) / 2,
    y: (screenPx.height - panelMm.height * pxPerMm) / 2,
  };
}

/** Zooms by `factor` so that the point under (screenX, screenY) stays where it is. */
export function zoomAt(
  view: ViewTransform,
  factor: number,
  screenX: number,
  screenY: number,
): ViewTransform {
  const pxPerMm = view.pxPerMm * factor;
  return {
    pxPerMm,
    x: screenX - ((screenX - view.x) / view.pxPerMm) * pxPerMm,
    y: screenY - ((screenY - view.y) / view.pxPerMm) * pxPerMm,
  };
}

/** Keeps the zoom between the whole panel and `deepestZoom` px/mm, and the panel on the screen. */
export function clampView(view: ViewTransform, panelMm: Extent, screenPx: Extent): ViewTransform {
  const whole = fitView(panelMm, screenPx);
  const deepest = Math.max(deepestZoom, whole.pxPerMm);
  const pxPerMm = Math.min(Math.max(view.pxPerMm, whole.pxPerMm), deepest);
  const scaled =
    pxPerMm === view.pxPerMm
      ? view
      : zoomAt(view, pxPerMm / view.pxPerMm, screenPx.width / 2, screenPx.height / 2);
  return {
    pxPerMm,
    x: clampAxis(scaled.x, panelMm.width * pxPerMm, screenPx.width),
    y: clampAxis(scaled.y, panelMm.height * pxPerMm, screenPx.height),
  };
}

function clampAxis(offset: number, panelPx: number, screenPx: number): number {
  if (panelPx <= screenPx) return (screenPx - panelPx) / 2;
  return Math.min(0, Math.max(screenPx - panelPx, offset));
}

/** The panel point under a screen point, millimetres. */
export function toPanelMm(view: ViewTransform, screenX: number, screenY: number) {
  return { xMm: (screenX - view.x) / view.pxPerMm, yMm: (screenY - view.y) / view.pxPerMm };
}
