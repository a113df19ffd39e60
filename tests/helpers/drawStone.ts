import { cropLinear } from '../../src/image/cropLinear';
import type { Mask, Raster } from '../../src/image/raster';
import type { HighlightLight } from '../../src/measure/highlightScene';
import { combine, normalize, type Vector } from '../../src/optics/vector';
import { type DrawnLamp, lampAt } from './drawnLamp';
import { type DrawnBody, type DrawnCamera, drawScene, takePhoto } from './drawScene';
import { seenFromAbove } from './ellipsoid';

const PX_PER_MM = 6;
const [WIDTH_PX, HEIGHT_PX] = [144, 120];
/** The mask leaves out the rim from this share of the way out on. */
const RIM = 0.95;

export interface DrawnStone {
  readonly alpha: number;
  readonly colorAt: DrawnBody['colorAt'];
  readonly lamp?: DrawnLamp;
  readonly camera?: DrawnCamera;
  readonly halfAxes?: Vector;
  readonly turnDeg?: number;
}

/** The lamp that the stones are drawn under unless another is given. */
export const STONE_LAMP = lampAt(40, 120, 12, 16);

/** One stone of index 1.54 on black, photographed: the 8-bit picture in linear light, its mask, and the true light. */
export function drawStone(drawn: DrawnStone): { stone: Raster; mask: Mask; light: HighlightLight } {
  const { lamp = STONE_LAMP, camera = { blurPx: 0.9, grain: 0.01 } } = drawn;
  const { halfAxes = [11, 8.5, 7], turnDeg = 20, alpha, colorAt } = drawn;
  const body = { center: [0, 0, halfAxes[2]] as const, halfAxes, turnDeg, n: 1.54, alpha, colorAt };
  const size = { widthPx: WIDTH_PX, heightPx: HEIGHT_PX, pxPerMm: PX_PER_MM };
  const sharp = drawScene({ ...size, lamp, ambient: 0.03, tray: 0, bodies: [body], samples: 2 });
  const whole = { row: 0, column: 0, width: WIDTH_PX, height: HEIGHT_PX };
  const inner = { ...body, halfAxes: [RIM * halfAxes[0], RIM * halfAxes[1], halfAxes[2]] as const };
  const data = Uint8Array.from({ length: WIDTH_PX * HEIGHT_PX }, (_, i) => {
    const x = ((i % WIDTH_PX) + 0.5 - WIDTH_PX / 2) / PX_PER_MM;
    const y = (HEIGHT_PX / 2 - Math.floor(i / WIDTH_PX) - 0.5) / PX_PER_MM;
    return seenFromAbove(inner, x, y) ? 1 : 0;
  });
  return {
    stone: cropLinear(takePhoto(sharp, camera), whole),
    mask: { width: WIDTH_PX, height: HEIGHT_PX, data },
    light: trueLight(lamp, camera),
  };
}

function trueLight(lamp: DrawnLamp, camera: DrawnCamera): HighlightLight {
  const half = normalize(combine([1, lamp.direction], [1, [0, 0, 1]]));
  // A lamp off the axis is mirrored by normals that fill an ellipse 1 / cos θ as long as wide (the half-vector's
  // Jacobian, Walter et al. 2007, eq. 14); this is the disc of equal area.
  const sourceSlope = Math.tan((lamp.angularDiameterDeg * Math.PI) / 720) / Math.sqrt(half[2]);
  const lampRadiance = lamp.radiance * (camera.exposure ?? 1);
  return { lampRadiance, sourceSlope, lampTurnRad: null, blurPx: camera.blurPx, half };
}
