import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const served = /\.(jpe?g|png|webp)$/i;
const listed = 'virtual:samples';

/**
 * Ships the sample photographs with the app under samples/, in `vite dev` and in the build, and
 * lists them as the module `virtual:samples`: each photo's name, corners and real size, read from
 * the truth beside it.
 */
export function serveSamples(folder: string): Plugin {
  return {
    name: 'seamgrain-samples',
    resolveId: (id) => (id === listed ? `\0${listed}` : null),
    load: async (id) =>
      id === `\0${listed}` ? `export default ${JSON.stringify(await listSamples(folder))}` : null,
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
      for (const name of (await readdir(folder)).filter((each) => served.test(each))) {
        const source = await readFile(join(folder, name));
        this.emitFile({ type: 'asset', fileName: `samples/${name}`, source });
      }
    },
  };
}

/** Photos that have their truth beside them. */
async function listSamples(folder: string) {
  if (!existsSync(folder)) return [];
  const names = (await readdir(folder)).filter((name) => name.endsWith('.truth.json')).sort();
  return Promise.all(
    names.map(async (name) => {
      const truth = JSON.parse(await readFile(join(folder, name), 'utf8'));
      const corners: readonly [number, number][] | undefined = truth.cornersPx;
      return {
        name: name.replace('.truth.json', ''),
        photo: truth.photo ?? name.replace('.truth.json', '.jpg'),
        cornersPx: corners?.map(([x, y]) => ({ x, y })) ?? null,
        widthMm: truth.panel?.widthMm ?? truth.widthMm ?? null,
        heightMm: truth.panel?.heightMm ?? truth.heightMm ?? truth.thicknessMm ?? null,
      };
    }),
  );
}
