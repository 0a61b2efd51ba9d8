const moduleStart = 'let Module = {};';

/**
 * Turns the text of `opencv-wasm/opencv.js` into the body of a function of `wasmBinary`
 * that returns the OpenCV module and touches nothing outside itself.
 *
 * The names by which the loader would recognise its surroundings are shadowed, so the
 * same code runs in Node and in a worker, fetches nothing and adds no process-wide handlers.
 * @param source the text of opencv.js, version 4.3.0-10
 * @throws Error when the text is not of the version this was written for
 */
export function wrapOpenCvSource(source: string): string {
  if (!source.startsWith(moduleStart)) {
    throw new Error(
      'opencv.js does not begin as version 4.3.0-10 does; wrapOpenCvSource must be checked.',
    );
  }
  return `
const module = { exports: {} }, exports = module.exports;
let process, require, define, window, document, importScripts, __filename, __dirname;
return (function () {
let Module = { wasmBinary, noExitRuntime: true };
${source.slice(moduleStart.length)}
return module.exports;
}).call({});
`;
}
