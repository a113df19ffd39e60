const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/**
 * CRC-32 as zip files carry it.
 *
 * @param before - That of the bytes that come before these, where they are summed piece by piece.
 * @returns 0 to 2³² − 1.
 * @see PKWARE APPNOTE 6.3, 4.4.7; the polynomial is that of ISO/IEC 3309 and ITU-T V.42.
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = before ^ 0xffffffff;
  for (let i = 0; i < bytes.length; i++) crc = TABLE[(crc ^ bytes[i]!) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
