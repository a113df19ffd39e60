/** A picture in linear light: row-major, channels interleaved, 1 = the level a clipped 8-bit pixel decodes to. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly channels: 1 | 3;
  readonly data: Float32Array;
  /** Light at which the camera was at its limit: above 1 where a darker shot was merged, 1 when left out. */
  readonly clipLevel?: number;
}

/** A yes/no picture: row-major, one byte a pixel, 0 or 1. */
export interface Mask {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** A rectangle of pixels; `row`, `column` is its upper-left pixel. */
export interface Box {
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
}
