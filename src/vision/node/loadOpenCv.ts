import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { OpenCvSource } from '../openCv.js';
import { type OpenCvFactory, startOpenCv } from '../startOpenCv.js';
import { wrapOpenCvSource } from '../wrapOpenCvSource.js';

let started: ReturnType<OpenCvSource> | null = null;

/** Loads OpenCV in Node on first use (about 70 ms); later calls share the instance. */
export const loadOpenCv: OpenCvSource = () => {
  started ??= start();
  return started;
};

async function start(): ReturnType<OpenCvSource> {
  const find = createRequire(import.meta.url).resolve;
  const [source, wasm] = await Promise.all([
    readFile(find('opencv-wasm/opencv.js'), 'utf8'),
    readFile(find('opencv-wasm/opencv.wasm')),
  ]);
  const factory = new Function('wasmBinary', wrapOpenCvSource(source)) as OpenCvFactory;
  return startOpenCv(factory, wasm);
}
