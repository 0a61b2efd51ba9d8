/** The wrapped opencv.js, as `opencvVitePlugin` hands it over. */
declare module 'opencv-wasm/opencv.js?factory' {
  const factory: (wasmBinary: Uint8Array) => unknown;
  export default factory;
}

declare module 'opencv-wasm/opencv.wasm?url' {
  const url: string;
  export default url;
}
