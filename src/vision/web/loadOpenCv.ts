import type { OpenCvSource } from '../openCv.js';
import { startOpenCv } from '../startOpenCv.js';

let started: ReturnType<OpenCvSource> | null = null;

/** Loads OpenCV inside a web worker on first use; later calls share the instance. */
export const loadOpenCv: OpenCvSource = () => {
  started ??= start();
  return started;
};

async function start(): ReturnType<OpenCvSource> {
  const [{ default: factory }, { default: wasmUrl }] = await Promise.all([
    import('opencv-wasm/opencv.js?factory'),
    import('opencv-wasm/opencv.wasm?url'),
  ]);
  const response = await fetch(wasmUrl);
  if (!response.ok) throw new Error(`opencv.wasm could not be read: ${response.status}`);
  const wasm = new Uint8Array(await response.arrayBuffer());
  return startOpenCv(factory, wasm);
}
