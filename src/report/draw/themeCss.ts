import type { Theme } from './theme.js';
import { themes } from './themes.js';

/** CSS rules that give every `paint`ed shape the colours of another theme. */
export function themeCss(theme: Theme): string {
  const roles = Object.keys(themes.bright) as (keyof Theme)[];
  return roles
    .flatMap((role) => [
      `.sg-fill-${role}{fill:${theme[role]}}`,
      `.sg-stroke-${role}{stroke:${theme[role]}}`,
    ])
    .join('');
}
