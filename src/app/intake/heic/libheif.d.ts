declare module 'libheif-js/libheif-wasm/libheif-bundle.mjs' {
  /** Starts the decoder; it is ready at once, its wasm travels inside the script. */
  export default function start(): unknown;
}
