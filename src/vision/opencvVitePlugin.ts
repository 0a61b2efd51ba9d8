import { wrapOpenCvSource } from './wrapOpenCvSource.js';

/**
 * The part of a Vite plugin that is used here; Vite's own type would tie this room to the bundler.
 */
export interface OpenCvVitePlugin {
  readonly name: string;
  readonly enforce: 'pre';
  transform(code: string, id: string): { code: string; map: null } | null;
}

/**
 * Lets Vite bundle opencv.js as `export default (wasmBinary) => cv`.
 *
 * A plain import builds but asks the server for './opencv.wasm' at run time in production.
 * Goes into both `plugins` and `worker.plugins`, beside
 * `optimizeDeps: { exclude: ["opencv-wasm"] }`.
 */
export function opencvVitePlugin(): OpenCvVitePlugin {
  return {
    name: 'seamgrain-opencv',
    enforce: 'pre',
    transform(code, id) {
      if (!/\/opencv-wasm\/opencv\.js(\?factory)?$/.test(id)) return null;
      return {
        code: `export default function openCvFactory(wasmBinary) {${wrapOpenCvSource(code)}}`,
        map: null,
      };
    },
  };
}
