import type { Theme } from './theme.js';

/** Neutral greys, so that the eye judges the wood; bright for bench and paper, dark for the shop. */
export const themes: Readonly<Record<'bright' | 'dark', Theme>> = {
  bright: { paper: '#ffffff', ink: '#1c1c1e', quiet: '#5f5f64', rule: '#c4c4c8' },
  dark: { paper: '#1b1c1e', ink: '#eeeeef', quiet: '#a9a9ae', rule: '#4b4c50' },
};
