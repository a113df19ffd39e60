import { cross, dot, normalize, type Vector } from '../optics/vector';
import type { BallFace } from './ballFace';
import { ballNormal } from './ballNormal';
import { type BrightPatch, brightPatches } from './brightPatches';
import type { Circle } from './circleFit';

/** Shape of the lamp's image on the ball. */
export interface LampRoundness {
  /** Place in the crop, and radius of the disc of equal area, pixels. */
  readonly row: number;
  readonly column: number;
  readonly radiusPx: number;
  /** Smallest over largest spread, blur and foreshortening undone: 1 for a whole disc or square, 0.28 for half a disc. */
  readonly evenness: number;
  /** Unevenness of the image about its own middle, share of its size: 0 for a whole disc or square. */
  readonly skewness: number;
}

/** A lamp cut off seems blurred; no more than this is undone, pixels. */
const MOST_BLUR_PX = 0.6;
/** The image is found above this share of its brightest part, and measured down to the other in a window around it. */
const LEVEL = { found: 0.15, measured: 0.08 };
const WINDOW = { radii: 1.5, px: 1.5 };

/**
 * Tells whether the ball mirrors the whole lamp, by second and third moments of its image.
 *
 * Across the plane of incidence the mirrored lamp is 1 / cos θ as wide as along it. A disc's and a square's
 * second moments are the same in every direction, and their third moments vanish.
 *
 * @param face - What the ball mirrors.
 * @param ball - The ball's circle in the crop.
 * @param view - Unit vector from the ball to the camera.
 * @param blurPx - Standard deviation of the camera's point spread.
 * @returns The shape; null when no lamp stands out.
 * @see Walter et al. 2007, eq. 14, the Jacobian of the half-vector.
 */
export function lampRoundness(
  face: BallFace,
  ball: Circle,
  view: Vector,
  blurPx: number,
): LampRoundness | null {
  const at = face.brightest.row * face.width + face.brightest.column;
  const patch = brightPatches(face.excess, face.width, () => LEVEL.found * face.peak).find(({ pixels }) =>
    pixels.includes(at),
  );
  if (!patch || patch.pixels.length < 6) return null;
  const normalAt = ballNormal(ball, view);
  const middle = normalAt(patch.row, patch.column);
  const [across, along] = incidenceFrame(middle, view);
  const cos = dot(middle, view);
  const places = aroundPatch(face, patch).map((i) => {
    const normal = normalAt(Math.floor(i / face.width), i % face.width);
    const scale = ball.radiusPx / dot(normal, middle);
    // Solid angle of a pixel: what is seen at a slant stands for more of the sphere.
    const weight = face.excess[i]! / (dot(normal, view) * scale ** -2);
    return { x: scale * cos * dot(normal, across), y: scale * dot(normal, along), weight };
  });
  return {
    row: patch.row,
    column: patch.column,
    radiusPx: Math.sqrt(patch.pixels.length / Math.PI),
    ...shapeOf(places, (Math.min(blurPx, MOST_BLUR_PX) ** 2 + 1 / 12) / cos),
  };
}

/** Pixels of the image and its blurred edge, which a threshold would cut unevenly. */
function aroundPatch({ excess, width, peak }: BallFace, { row, column, pixels }: BrightPatch): number[] {
  const reach = WINDOW.radii * Math.sqrt(pixels.length / Math.PI) + WINDOW.px;
  const places: number[] = [];
  excess.forEach((value, i) => {
    const apart = Math.hypot(Math.floor(i / width) - row, (i % width) - column);
    if (apart < reach && value > LEVEL.measured * peak) places.push(i);
  });
  return places;
}

/** Unit vectors across and along the plane of incidence, both at right angles to the normal. */
function incidenceFrame(normal: Vector, view: Vector): [Vector, Vector] {
  const side = cross(view, normal);
  const across = dot(side, side) < 1e-6 ? normalize(cross([0, 1, 0], normal)) : normalize(side);
  return [across, cross(normal, across)];
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

function shapeOf(places: readonly Place[], blurVariance: number) {
  const total = places.reduce((sum, { weight }) => sum + weight, 0);
  const mean = (of: (place: Place) => number) =>
    places.reduce((sum, place) => sum + place.weight * of(place), 0) / total;
  const [x, y] = [mean((p) => p.x), mean((p) => p.y)];
  const xx = mean((p) => (p.x - x) ** 2) - blurVariance;
  const yy = mean((p) => (p.y - y) ** 2) - blurVariance;
  const xy = mean((p) => (p.x - x) * (p.y - y));
  const middle = (xx + yy) / 2;
  const apart = Math.hypot((xx - yy) / 2, xy);
  const third = [
    mean((p) => (p.x - x) ** 3),
    mean((p) => (p.x - x) ** 2 * (p.y - y)),
    mean((p) => (p.x - x) * (p.y - y) ** 2),
    mean((p) => (p.y - y) ** 3),
  ] as const;
  const skewness = Math.hypot(third[0] + third[2], third[1] + third[3]) / Math.max(1e-9, 2 * middle) ** 1.5;
  return { evenness: Math.max(0, middle - apart) / Math.max(1e-9, middle + apart), skewness };
}
