import wasm from './kernels.wasm?url&inline';

/** What `assembly/kernels.ts` exports, described there. */
export interface Kernels {
  readonly memory: WebAssembly.Memory;
  lobePlane(
    field: number,
    isTilted: number,
    isSquare: number,
    columns: number,
    rows: number,
    to: number,
  ): void;
  roundLobes(xs: number, ys: number, count: number, q2: number, to: number): void;
  squareLobes(
    xs: number,
    ys: number,
    count: number,
    sine: number,
    cosine: number,
    q2: number,
    to: number,
  ): void;
  extremesUnderDisc(
    from: number,
    width: number,
    height: number,
    halfWidths: number,
    radius: number,
    isLeast: number,
    to: number,
    stride: number,
  ): void;
  convolvePlane(
    from: number,
    width: number,
    height: number,
    weights: number,
    length: number,
    line: number,
    to: number,
  ): void;
  logarithms(values: number, count: number): void;
  blockMeans(
    fine: number,
    width: number,
    height: number,
    q: number,
    weights: number,
    length: number,
    line: number,
    to: number,
  ): void;
}

/** Kernels may write so many bytes past the end of what they are asked for. */
export const OVERRUN = 64;
const PAGE = 65536;

let opened: Kernels | null = null;

/** The kernels, compiled at the first call: three thousand bytes, so at once. */
export function openKernels(): Kernels {
  if (opened) return opened;
  const bytes = Uint8Array.from(atob(wasm.slice(wasm.indexOf(',') + 1)), (letter) => letter.charCodeAt(0));
  opened = new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports as unknown as Kernels;
  return opened;
}

/**
 * Places in the kernels' memory, which grows for them; each holds until the next call.
 *
 * It begins with 32 MB, which cost nothing until they are touched: growing detaches a buffer, and from the first one that
 * was ever detached V8 asks at every access of any typed array whether it is, which makes all loops a seventh slower.
 *
 * @param sizes - Bytes wanted.
 * @returns Where each begins, a multiple of 16 bytes.
 */
export function placesFor(...sizes: readonly number[]): number[] {
  const { memory } = openKernels();
  let next = OVERRUN;
  const starts = sizes.map((size) => {
    const start = next;
    next += (size + OVERRUN + 15) & ~15;
    return start;
  });
  const missing = next - memory.buffer.byteLength;
  if (missing > 0) memory.grow(Math.ceil(missing / PAGE));
  return starts;
}

/** Values at a place in the kernels' memory. */
export const floatsAt = (at: number, count: number) =>
  new Float32Array(openKernels().memory.buffer, at, count);
export const doublesAt = (at: number, count: number) =>
  new Float64Array(openKernels().memory.buffer, at, count);
export const bytesAt = (at: number, count: number) => new Uint8Array(openKernels().memory.buffer, at, count);
