import type { Theme } from './theme.js';

/**
 * Fill or stroke in a theme's colour, as SVG attributes.
 * The class beside the plain attribute lets a page restyle it for a dark screen (`themeCss`).
 */
export function paint(theme: Theme, what: 'fill' | 'stroke', role: keyof Theme): string {
  return `class="sg-${what}-${role}" ${what}="${theme[role]}"`;
}
