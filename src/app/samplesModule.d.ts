declare module 'virtual:samples' {
  const samples: readonly {
    readonly name: string;
    readonly photo: string;
    readonly cornersPx: import('../core/image/photoScale.js').CornersPx | null;
    readonly widthMm: number | null;
    readonly heightMm: number | null;
  }[];
  export default samples;
}
