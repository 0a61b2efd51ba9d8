/** A three-channel profile made of tone curves and a matrix to XYZ under D50. */
export interface MatrixProfile {
  /** Linear value of each of the 256 levels, per channel. */
  readonly curves: readonly [Float64Array, Float64Array, Float64Array];
  /** Rows X, Y, Z; columns R, G, B. */
  readonly toXyz: readonly (readonly [number, number, number])[];
}

/**
 * Reads a matrix and tone-curve profile (ICC.1:2022, 8.3: three-component matrix-based).
 * @returns null for profiles of any other kind (tables, grey, CMYK)
 */
export function readMatrixProfile(bytes: Uint8Array): MatrixProfile | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.byteLength < 132) return null;
  const tags = new Map<string, number>();
  for (let n = 0; n < view.getUint32(128); n++) {
    const at = 132 + 12 * n;
    tags.set(letters(view, at), view.getUint32(at + 4));
  }
  const columns = ['rXYZ', 'gXYZ', 'bXYZ'].map((tag) => tags.get(tag));
  const curveTags = ['rTRC', 'gTRC', 'bTRC'].map((tag) => tags.get(tag));
  if (columns.includes(undefined) || curveTags.includes(undefined)) return null;
  const toXyz = [0, 1, 2].map(
    (row) =>
      columns.map((at) => view.getInt32(at! + 8 + 4 * row) / 65536) as [number, number, number],
  );
  const curves = curveTags.map((at) => readCurve(view, at!));
  if (curves.includes(null)) return null;
  return { curves: curves as [Float64Array, Float64Array, Float64Array], toXyz };
}

function letters(view: DataView, at: number): string {
  return [0, 1, 2, 3].map((n) => String.fromCharCode(view.getUint8(at + n))).join('');
}

function readCurve(view: DataView, at: number): Float64Array | null {
  const kind = letters(view, at);
  if (kind === 'curv') return levels(curveOfPoints(view, at));
  if (kind === 'para') return levels(parametricCurve(view, at));
  return null;
}

const levels = (curve: (x: number) => number) =>
  Float64Array.from({ length: 256 }, (_, level) => curve(level / 255));

function curveOfPoints(view: DataView, at: number): (x: number) => number {
  const count = view.getUint32(at + 8);
  if (count === 0) return (x) => x;
  if (count === 1) return (x) => x ** (view.getUint16(at + 12) / 256);
  const point = (n: number) => view.getUint16(at + 12 + 2 * n) / 65535;
  return (x) => {
    const place = x * (count - 1);
    const low = Math.min(count - 2, Math.floor(place));
    return point(low) + (place - low) * (point(low + 1) - point(low));
  };
}

/** ICC.1:2022, 10.18, function types 0 to 4. */
function parametricCurve(view: DataView, at: number): (x: number) => number {
  const type = view.getUint16(at + 8);
  const p = (n: number) => view.getInt32(at + 12 + 4 * n) / 65536;
  const g = p(0);
  if (type === 0) return (x) => x ** g;
  const [a, b] = [p(1), p(2)];
  const power = (x: number) => Math.max(0, a * x + b) ** g;
  if (type === 1) return (x) => (x >= -b / a ? power(x) : 0);
  if (type === 2) return (x) => (x >= -b / a ? power(x) + p(3) : p(3));
  if (type === 3) return (x) => (x >= p(4) ? power(x) : p(3) * x);
  return (x) => (x >= p(4) ? power(x) + p(5) : p(3) * x + p(6));
}
