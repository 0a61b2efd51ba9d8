import { escapeXml } from '../draw/escapeXml.js';

/** Two pictures of the same place, one over the other. */
export interface Wipe {
  readonly beforeHref: string;
  readonly afterHref: string;
  /** Words on the two sides, default `before` and `after`. */
  readonly beforeName?: string;
  readonly afterName?: string;
  /** Proportions of both pictures. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * Before and after at the same place, parted by an edge that finger, mouse and arrow keys move.
 * Without script they stand half and half; on paper the one after stands alone.
 * Needs `withScript` on its `htmlPage`.
 */
export function wipeBlock(wipe: Wipe): string {
  const { beforeHref, afterHref, beforeName = 'before', afterName = 'after' } = wipe;
  const picture = (href: string, name: string, className: string) =>
    `<img class="${className}" src="${escapeXml(href)}" alt="${escapeXml(name)}">`;
  const name = (text: string, side: string) =>
    `<span class="wipe-name wipe-${side}">${escapeXml(text)}</span>`;
  const move = "this.parentNode.style.setProperty('--cut',this.value+'%')";
  const label = `Move the edge between ${beforeName} and ${afterName}`;
  return `<div class="wipe" style="--cut:50%;aspect-ratio:${wipe.widthPx}/${wipe.heightPx}">${picture(beforeHref, beforeName, 'wipe-before')}${picture(afterHref, afterName, 'wipe-after')}${name(beforeName, 'left')}${name(afterName, 'right')}<span class="wipe-edge"></span><input type="range" min="0" max="100" value="50" aria-label="${escapeXml(label)}" oninput="${escapeXml(move)}"></div>`;
}
