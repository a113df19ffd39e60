/** A decoded photograph: upright, sRGB, 8 bits a channel. */
export interface Photo {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Row-major RGBA, `4 * widthPx * heightPx` bytes. */
  readonly rgba: Uint8ClampedArray;
  /** Focal length as if the picture were 36 × 24 mm, from the file's EXIF data; null or left out when it says none. */
  readonly focalLength35Mm?: number | null;
}
