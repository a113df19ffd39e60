import type { Mask, Raster } from '../image/raster';
import type { Mat, OpenCv } from './openCvShape';

/** Makes matrices that are given back when the work is over, whatever happens. */
export interface Mats {
  /** Registers something made by OpenCV to be given back. */
  keep<T extends { delete(): void }>(made: T): T;
  empty(): Mat;
  ofRaster(raster: Raster): Mat;
  /** 8-bit, as the mask is: 1 inside and 0 outside. */
  ofMask(mask: Mask): Mat;
}

/**
 * Runs a piece of work with matrices in OpenCV's memory: the only place that decides how long they live.
 *
 * @param work - Must not return a matrix, nor a view of one.
 * @throws Error with OpenCV's own sentence where OpenCV throws a number.
 */
export function withMats<T>(cv: OpenCv, work: (mats: Mats) => T): T {
  const made: { delete(): void }[] = [];
  const keep = <M extends { delete(): void }>(one: M): M => {
    made.push(one);
    return one;
  };
  try {
    return work({
      keep,
      empty: () => keep(new cv.Mat()),
      ofRaster: (raster) => fillRaster(keep(newRaster(cv, raster)), raster),
      ofMask: (mask) => fillMask(keep(new cv.Mat(mask.height, mask.width, cv.CV_8UC1)), mask),
    });
  } catch (error) {
    throw readable(cv, error);
  } finally {
    for (const one of made) one.delete();
  }
}

/** Copies a one- or three-channel float matrix out of OpenCV's memory. */
export function rasterOfMat(mat: Mat, channels: Raster['channels']): Raster {
  return { width: mat.cols, height: mat.rows, channels, data: mat.data32F.slice() };
}

/** Copies an 8-bit matrix of ones and zeros out of OpenCV's memory. */
export function maskOfMat(mat: Mat): Mask {
  return { width: mat.cols, height: mat.rows, data: mat.data.slice() };
}

function newRaster(cv: OpenCv, { width, height, channels }: Raster): Mat {
  return new cv.Mat(height, width, channels === 3 ? cv.CV_32FC3 : cv.CV_32FC1);
}

function fillRaster(mat: Mat, raster: Raster): Mat {
  if (raster.data.length !== raster.width * raster.height * raster.channels) {
    throw new RangeError(
      `A raster of ${raster.width} × ${raster.height} does not hold ${raster.data.length} values.`,
    );
  }
  mat.data32F.set(raster.data);
  return mat;
}

function fillMask(mat: Mat, mask: Mask): Mat {
  if (mask.data.length !== mask.width * mask.height) {
    throw new RangeError(
      `A mask of ${mask.width} × ${mask.height} does not hold ${mask.data.length} values.`,
    );
  }
  mat.data.set(mask.data);
  return mat;
}

function readable(cv: OpenCv, error: unknown): unknown {
  return typeof error === 'number' ? new Error(`OpenCV: ${cv.exceptionFromPtr(error).msg.trim()}`) : error;
}
