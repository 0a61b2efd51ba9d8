/** Fonts that every system has; the rasteriser on a server falls through to its default sans. */
export const fontFamily =
  'system-ui, -apple-system, Segoe UI, Roboto, Helvetica, Arial, DejaVu Sans, sans-serif';
