import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const served = /\.(jpe?g|png|webp)$/i;

/** Ships the sample photographs with the app under samples/, in `vite dev` and in the build. */
export function serveSamples(folder: string): Plugin {
  return {
    name: 'seamgrain-samples',
    configureServer(server) {
      server.middlewares.use('/samples', async (request, response, next) => {
        const name = decodeURIComponent((request.url ?? '').replace(/^\/|\?.*$/g, ''));
        if (!served.test(name) || name.includes('..') || !existsSync(join(folder, name))) {
          return next();
        }
        response.end(await readFile(join(folder, name)));
      });
    },
    async generateBundle() {
      if (!existsSync(folder)) return;
      const names = await readdir(folder, { recursive: true });
      for (const name of names.filter((each) => served.test(each))) {
        const source = await readFile(join(folder, name));
        this.emitFile({ type: 'asset', fileName: `samples/${name}`, source });
      }
    },
  };
}
