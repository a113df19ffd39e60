import { maskWhere } from '../image/maskWhere';
import type { Mask } from '../image/raster';
import { distanceToEdge, distanceToMask } from '../vision/distanceToEdge';
import type { OpenCv } from '../vision/openCv';

/**
 * Opens a mask by a disc of any size: removes spurs and necks that the disc does not fit into.
 *
 * Works by exact distances, so that a wide disc takes no longer than a narrow one.
 *
 * @param mask - What lies beyond the picture's edge counts as outside.
 * @param radiusPx - Radius of the disc, pixels, ≥ 0.
 */
export function openByDisc(cv: OpenCv, mask: Mask, radiusPx: number): Mask {
  const { width, height } = mask;
  const depth = distanceToEdge(cv, mask).data;
  const core = maskWhere(width, height, (i) => depth[i]! > radiusPx);
  if (!core.data.includes(1)) return core;
  const apart = distanceToMask(cv, core).data;
  return maskWhere(width, height, (i) => !!mask.data[i] && apart[i]! <= radiusPx);
}

/**
 * Closes a mask by a disc of any size: fills bays and holes that the disc does not fit into.
 *
 * @param mask - With more than `radiusPx` of outside around it; not empty.
 * @param radiusPx - Radius of the disc, pixels, ≥ 0.
 */
export function closeByDisc(cv: OpenCv, mask: Mask, radiusPx: number): Mask {
  const { width, height } = mask;
  const apart = distanceToMask(cv, mask).data;
  const depth = distanceToEdge(
    cv,
    maskWhere(width, height, (i) => apart[i]! <= radiusPx),
  ).data;
  return maskWhere(width, height, (i) => !!mask.data[i] || depth[i]! > radiusPx);
}
