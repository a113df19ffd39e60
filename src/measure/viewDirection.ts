import type { Photo } from '../image/photo';
import { cross, dot, normalize, type Vector } from '../optics/vector';

/** Diagonal of the 36 × 24 mm frame that equivalent focal lengths refer to, mm. */
const FRAME_DIAGONAL_MM = 43.27;
/** Taken when the file states none: between a phone's main lens held close and a tele lens held far. */
const ASSUMED_FOCAL_LENGTH_35_MM = 100;

/**
 * Direction from a place in the picture to the camera.
 *
 * @param photo - Supplies the size and the focal length.
 * @param row - Row, pixels.
 * @param column - Column, pixels.
 * @returns Unit vector: x right, y up, z along the camera's axis.
 */
export function viewDirection(
  photo: Pick<Photo, 'widthPx' | 'heightPx' | 'focalLength35Mm'>,
  row: number,
  column: number,
): Vector {
  const focalLengthMm = photo.focalLength35Mm ?? ASSUMED_FOCAL_LENGTH_35_MM;
  const focalPx = (focalLengthMm / FRAME_DIAGONAL_MM) * Math.hypot(photo.widthPx, photo.heightPx);
  return normalize([photo.widthPx / 2 - column, row - photo.heightPx / 2, focalPx]);
}

/** The vector in a frame whose z points along the view and whose x stays level in the picture. */
export function inViewFrame(v: Vector, view: Vector): Vector {
  const right = normalize(cross([0, 1, 0], view));
  return [dot(v, right), dot(v, cross(view, right)), dot(v, view)];
}
