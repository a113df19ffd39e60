/**
 * Inner loops for WebAssembly, four 32-bit floats at a time; AssemblyScript. `npm run kernels` makes `kernels.wasm` of it.
 *
 * Pointers are bytes. Planes are rows of 32-bit floats without gaps; each may be overrun by three values at its end.
 */
export { lobePlane, roundLobes, squareLobes } from './lobes';
export { logarithms } from './logarithms';
export { blockMeans } from './means';
