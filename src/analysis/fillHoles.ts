import { maskWhere } from '../image/maskWhere';
import type { Mask } from '../image/raster';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';

/** Fills every hole that the outside cannot reach from the picture's edge. */
export function fillHoles(cv: OpenCv, mask: Mask): Mask {
  const { width, height } = mask;
  const outside = maskWhere(width, height, (i) => !mask.data[i]);
  const { labels, components } = labelComponents(cv, outside);
  const open = new Uint8Array(components.length + 1);
  for (const { box, label } of components) {
    const reachesEdge =
      box.row === 0 ||
      box.column === 0 ||
      box.row + box.height === height ||
      box.column + box.width === width;
    if (reachesEdge) open[label] = 1;
  }
  return maskWhere(width, height, (i) => !open[labels[i]!]);
}
