import type { Mask } from '../image/raster';
import { distanceToEdge } from '../vision/distanceToEdge';
import type { OpenCv } from '../vision/openCv';

/**
 * Opens a mask by a disc of any size: removes spurs and necks that the disc does not fit into.
 *
 * Works by exact distances, so that a wide disc takes no longer than a narrow one.
 *
 * @param mask - With more than `radiusPx` of outside around it, since the picture's edge counts as an edge.
 * @param radiusPx - Radius of the disc, pixels, ≥ 0.
 */
export function openByDisc(cv: OpenCv, mask: Mask, radiusPx: number): Mask {
  const core = distanceToEdge(cv, mask).data;
  const outsideCore = { ...mask, data: Uint8Array.from(core, (depth) => (depth > radiusPx ? 0 : 1)) };
  const apart = distanceToEdge(cv, outsideCore).data;
  return { ...mask, data: mask.data.map((inside, i) => (inside && apart[i]! <= radiusPx ? 1 : 0)) };
}

/**
 * Closes a mask by a disc of any size: fills bays and holes that the disc does not fit into.
 *
 * @param mask - With more than twice `radiusPx` of outside around it, since the picture's edge counts as an edge.
 * @param radiusPx - Radius of the disc, pixels, ≥ 0.
 */
export function closeByDisc(cv: OpenCv, mask: Mask, radiusPx: number): Mask {
  const outside = { ...mask, data: mask.data.map((inside) => 1 - inside) };
  const apart = distanceToEdge(cv, outside).data;
  const reached = { ...mask, data: Uint8Array.from(apart, (distance) => (distance <= radiusPx ? 1 : 0)) };
  const depth = distanceToEdge(cv, reached).data;
  return { ...mask, data: mask.data.map((inside, i) => (inside || depth[i]! > radiusPx ? 1 : 0)) };
}
