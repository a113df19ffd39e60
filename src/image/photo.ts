/** A decoded photograph: upright, sRGB, 8 bits a channel. */
export interface Photo {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Row-major RGBA, `4 * widthPx * heightPx` bytes. */
  readonly rgba: Uint8ClampedArray;
  /** Focal length as if the picture were 36 × 24 mm, from the file's EXIF data; null or left out when it says none. */
  readonly focalLength35Mm?: number | null;
  /** Light let in, seconds · ISO / f-number², from the file's EXIF data; null or left out when it says none. */
  readonly exposure?: number | null;
  /** How strongly a JPEG was compressed, 1 to 100; null or left out for other files. */
  readonly jpegQuality?: number | null;
  /** Further shots of the same scene, merged with this one wherever linear light is read; left out without any. */
  readonly merging?: Merging;
}

/** How shots of one scene come together in the pixels and the unit of the photo at hand. */
export interface Merging {
  /** Linear light of each 8-bit code, 256 values, 0 to 1. */
  readonly linear: Float32Array;
  readonly shots: readonly Shot[];
  /** Light at which the darkest shot is at its limit; 1 is the limit of the photo at hand. */
  readonly clipLevel: number;
}

/** A further shot of the scene, of the same size. */
export interface Shot {
  readonly rgba: Uint8ClampedArray;
  /** Recorded light as a share of what the photo at hand recorded: red, green, blue. */
  readonly exposure: readonly [number, number, number];
  readonly placing: Placing;
}

/**
 * Where a pixel of the photo at hand lies in another shot: the camera may have moved a little in between.
 * With r and c counted from the photo's middle, row = r + down + grow·r + turn·c, column = c + right + grow·c − turn·r.
 */
export interface Placing {
  /** Pixels. */
  readonly down: number;
  readonly right: number;
  /** Radians; small. */
  readonly turn: number;
  /** Scale less 1; small. */
  readonly grow: number;
}
