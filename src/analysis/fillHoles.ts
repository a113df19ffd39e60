import type { Mask } from '../image/raster';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';

/** Fills every hole that the outside cannot reach from the picture's edge. */
export function fillHoles(cv: OpenCv, mask: Mask): Mask {
  const { width, height } = mask;
  const outside = { width, height, data: mask.data.map((inside) => 1 - inside) };
  const { labels, components } = labelComponents(cv, outside);
  const open = new Set(
    components
      .filter(
        ({ box }) =>
          box.row === 0 ||
          box.column === 0 ||
          box.row + box.height === height ||
          box.column + box.width === width,
      )
      .map((component) => component.label),
  );
  return {
    width,
    height,
    data: Uint8Array.from(labels, (label) => (label !== 0 && open.has(label) ? 0 : 1)),
  };
}
