import { escapeXml } from '../draw/escapeXml.js';
import { pageCss } from './pageCss.js';

/**
 * One self-contained page: no address leads out of it, and its own policy forbids any.
 * @param body HTML, already escaped
 * @param css rules beside the ones of every page
 * @param withScript allow the few inline handlers that a wipe needs, default false
 */
export function htmlPage({
  title,
  body,
  css = '',
  withScript = false,
}: {
  readonly title: string;
  readonly body: string;
  readonly css?: string;
  readonly withScript?: boolean;
}): string {
  const policy = [
    "default-src 'none'",
    'img-src data:',
    "style-src 'unsafe-inline'",
    ...(withScript ? ["script-src 'unsafe-inline'"] : []),
  ].join('; ');
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>${escapeXml(title)}</title><style>${pageCss}${css}</style></head><body><main>${body}</main></body></html>\n`;
}
