/** One character a byte; shorter where the file ends. */
export function asciiAt(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}

/** Unsigned number, most significant byte first; NaN beyond the end. */
export function bigEndianAt(bytes: Uint8Array, at: number, length: number): number {
  let value = 0;
  for (let i = 0; i < length; i++) value = value * 256 + (bytes[at + i] ?? Number.NaN);
  return value;
}

/** Unsigned number, least significant byte first; NaN beyond the end. */
export function littleEndianAt(bytes: Uint8Array, at: number, length: number): number {
  let value = 0;
  for (let i = length - 1; i >= 0; i--) value = value * 256 + (bytes[at + i] ?? Number.NaN);
  return value;
}
