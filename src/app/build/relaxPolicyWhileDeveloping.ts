import type { Plugin } from 'vite';

/** Takes the content policy out of index.html in `vite dev`, whose reloading needs inline scripts. */
export function relaxPolicyWhileDeveloping(): Plugin {
  return {
    name: 'seamgrain-relax-policy',
    apply: 'serve',
    transformIndexHtml: (html) =>
      html.replace(/<meta\s+http-equiv="Content-Security-Policy"[\s\S]*?\/>/, ''),
  };
}
