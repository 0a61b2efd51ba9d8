import type { OpenCv } from './openCv.js';

/** What the wrapped opencv.js is: a function of the wasm file's bytes. */
export type OpenCvFactory = (wasmBinary: Uint8Array) => unknown;

interface StartingModule {
  then?: unknown;
  calledRun?: boolean;
  onRuntimeInitialized?: () => void;
}

/**
 * Starts OpenCV and resolves once its functions can be called.
 *
 * The module carries a `then` that resolves to the module itself, so awaiting it never
 * ends; it is removed, and the module travels inside an object.
 * @param factory the wrapped opencv.js
 * @param wasmBinary the bytes of opencv.wasm
 */
export function startOpenCv(
  factory: OpenCvFactory,
  wasmBinary: Uint8Array,
): Promise<{ readonly cv: OpenCv }> {
  return new Promise((resolve, reject) => {
    const starting = factory(wasmBinary) as StartingModule & { onAbort?: (why: unknown) => void };
    delete starting.then;
    const done = () => resolve({ cv: starting as unknown as OpenCv });
    starting.onAbort = (why) => reject(new Error(`OpenCV did not start: ${String(why)}`));
    if (starting.calledRun) done();
    else starting.onRuntimeInitialized = done;
  });
}
