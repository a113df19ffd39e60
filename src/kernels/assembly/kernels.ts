/**
 * Inner loops for WebAssembly, four or sixteen values at a time; AssemblyScript. `npm run kernels` makes `kernels.wasm` of it.
 *
 * Pointers are bytes. Planes are rows without gaps, of 32-bit floats where nothing else is said; each may be overrun by
 * 63 bytes at its end.
 */
export { extremesUnderDisc } from './extremes';
export { lobePlane, roundLobes, squareLobes } from './lobes';
export { logarithms } from './logarithms';
export { blockMeans, convolvePlane } from './means';
