import type { Photo } from '../../src/image/photo';
import type { Raster } from '../../src/image/raster';
import type { Vector } from '../../src/optics/vector';
import { type DrawnLamp, lampRays } from './drawnLamp';
import { blocks, type Ellipsoid, normalAt, seenFromAbove } from './ellipsoid';
import { normalNoise } from './normalNoise';
import { pointSpread } from './pointSpread';
import { mirrored, roughGloss, smoothGloss } from './roughMirror';

type Color = readonly [number, number, number];

/** A ball or stone. */
export interface DrawnBody extends Ellipsoid {
  /** Refractive index. */
  readonly n: number;
  /** GGX roughness; 0 for a perfect mirror. */
  readonly alpha: number;
  /** Share of light that it scatters, by place on its unit sphere. */
  readonly colorAt: (place: Vector) => Color;
}

/** A tray seen straight from above by a camera far away. */
export interface DrawnScene {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  readonly lamp: DrawnLamp;
  /** Light from all around, as the radiance of a white sheet in it. */
  readonly ambient: number;
  /** Share of light that the tray scatters; 0 for none. */
  readonly tray: number;
  readonly bodies: readonly DrawnBody[];
  /** Each pixel is the mean of `samples`² places. */
  readonly samples: number;
}

/** The same color all over. */
export const plain =
  (red: number, green = red, blue = red) =>
  (): Color => [red, green, blue];

const SHADOW_RAYS = 24;

/** Draws a scene in linear light, sharp; x 0, y 0 is the middle of the picture, z 0 the tray. */
export function drawScene(scene: DrawnScene): Raster {
  const { widthPx, heightPx, pxPerMm, lamp, samples } = scene;
  const { rays, solidAngle } = lampRays(lamp, SHADOW_RAYS);
  const lit = (lamp.radiance * solidAngle) / (Math.PI * SHADOW_RAYS);
  const sheet = scene.tray * (lit * SHADOW_RAYS * lamp.direction[2] + scene.ambient);
  const paints = scene.bodies.map((body) => ({ body, paint: painter(scene, body, rays, lit, sheet) }));
  const data = new Float32Array(3 * widthPx * heightPx);
  for (let row = 0, i = 0; row < heightPx; row++) {
    for (let column = 0; column < widthPx; column++, i += 3) {
      let bare = -1;
      for (let s = 0; s < samples * samples; s++) {
        const x = (column + ((s % samples) + 0.5) / samples - widthPx / 2) / pxPerMm;
        const y = (heightPx / 2 - row - (Math.floor(s / samples) + 0.5) / samples) / pxPerMm;
        const color = seen(paints, x, y);
        if (!color && bare < 0) bare = trayAt(scene, [x, y, 0], rays, lit);
        for (let c = 0; c < 3; c++) data[i + c]! += (color ? color[c]! : bare) / (samples * samples);
      }
    }
  }
  return { width: widthPx, height: heightPx, channels: 3, data };
}

interface Painted {
  readonly body: DrawnBody;
  readonly paint: (place: Vector) => Color;
}

function seen(paints: readonly Painted[], x: number, y: number): Color | null {
  for (const { body, paint } of paints) {
    const place = seenFromAbove(body, x, y);
    if (place) return paint(place);
  }
  return null;
}

function trayAt(
  { bodies, tray, ambient, lamp }: DrawnScene,
  at: Vector,
  rays: readonly Vector[],
  lit: number,
): number {
  if (tray === 0) return 0;
  const near = bodies.filter((body) => castsShadowNear(body, at, lamp));
  let sum = 0;
  for (const ray of rays) if (!near.some((body) => blocks(body, at, ray))) sum += ray[2];
  return tray * (lit * sum + ambient);
}

/** False where the body is surely too far off to stand before any part of the lamp. */
function castsShadowNear({ center, halfAxes }: DrawnBody, at: Vector, lamp: DrawnLamp): boolean {
  const apart = Math.hypot(at[0] - center[0], at[1] - center[1]);
  const steepest = Math.acos(lamp.direction[2]) + (lamp.angularDiameterDeg * Math.PI) / 360;
  const top = center[2] + halfAxes[2];
  return apart < Math.max(halfAxes[0], halfAxes[1]) + top * Math.tan(Math.min(1.5, steepest));
}

/** Scattered light, the lamp's image, and the mirror image of the room or, at steep angles, of the tray. */
function painter(
  { lamp, ambient }: DrawnScene,
  body: DrawnBody,
  rays: readonly Vector[],
  lit: number,
  sheet: number,
) {
  const gloss = body.alpha > 0 ? roughGloss(lamp, body.n, body.alpha) : smoothGloss(lamp, body.n);
  return (place: Vector): Color => {
    const normal = normalAt(body, place);
    let facing = 0;
    for (const ray of rays) {
      facing += Math.max(0, normal[0] * ray[0] + normal[1] * ray[1] + normal[2] * ray[2]);
    }
    const light = lit * facing + ambient;
    const room = 2 * normal[2] * normal[2] < 1 ? sheet : ambient;
    const shine = gloss(normal) + room * mirrored(body.n, normal[2]);
    const [red, green, blue] = body.colorAt(place);
    return [red * light + shine, green * light + shine, blue * light + shine];
  };
}

/** How the drawn camera works. */
export interface DrawnCamera {
  /** Standard deviation of its point spread, pixels. */
  readonly blurPx: number;
  /** Factor on all light. */
  readonly exposure?: number;
  /** Standard deviation of its noise, share of the light, and where the noise begins. */
  readonly grain?: number;
  readonly seed?: number;
}

/** Takes the photo: blur, grain, and 8 bits of sRGB (IEC 61966-2-1). */
export function takePhoto(sharp: Raster, camera: DrawnCamera): Photo {
  const { blurPx, exposure = 1, grain = 0, seed = 1 } = camera;
  const noise = normalNoise(seed);
  const { width, height } = sharp;
  const rgba = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let channel = 0; channel < 3; channel++) {
    const light = Float64Array.from({ length: width * height }, (_, i) => sharp.data[3 * i + channel]!);
    const soft = pointSpread(light, width, height, blurPx);
    soft.forEach((value, i) => {
      const v = Math.min(1, Math.max(0, exposure * value * (1 + (grain > 0 ? grain * noise() : 0))));
      rgba[4 * i + channel] = Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
    });
  }
  // A lens so long that the camera is as far away as the drawing has it.
  return { widthPx: width, heightPx: height, rgba, focalLength35Mm: 2000 };
}
