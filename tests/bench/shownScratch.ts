import type { Photo } from '../../src/image/photo';
import { SRGB_8BIT_TO_LINEAR } from '../../src/optics/srgbTransfer';
import type { TrueFlaw } from './truth';

/** Added before logarithms, share of full scale: the camera's noise in the dark. */
const FLOOR = 0.002;
/** A scratch shows where it changes light by this, ln units, averaged over the length below. */
const SHOWN = 0.06;
const AVERAGED_MM = 1;
const STEP_MM = 0.1;

/**
 * Length over which a scratch shows: where the photo differs along it from the same photo without scratches.
 *
 * @param flaw - A true scratch with its path.
 * @returns Millimeters of its path in the picture.
 */
export function shownMm(flaw: TrueFlaw, photo: Photo, bare: Photo, mmPerPx: number): number {
  const changes = along(flaw.path ?? [], STEP_MM / mmPerPx).map(([row, column]) =>
    Math.log((green(photo, row, column) + FLOOR) / (green(bare, row, column) + FLOOR)),
  );
  const half = Math.round(AVERAGED_MM / STEP_MM / 2);
  const shown = changes.filter((_, i) => {
    const near = changes.slice(Math.max(0, i - half), i + half + 1);
    return Math.abs(near.reduce((sum, value) => sum + value, 0)) / near.length >= SHOWN;
  });
  return shown.length * STEP_MM;
}

function along(path: readonly (readonly [number, number])[], step: number): (readonly [number, number])[] {
  return path.slice(1).flatMap((to, i) => {
    const from = path[i]!;
    const count = Math.max(1, Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / step));
    return Array.from({ length: count }, (_, k) => {
      const share = (k + 0.5) / count;
      return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])] as const;
    });
  });
}

function green({ rgba, widthPx, heightPx }: Photo, row: number, column: number): number {
  const r = Math.min(heightPx - 1, Math.max(0, Math.round(row)));
  const c = Math.min(widthPx - 1, Math.max(0, Math.round(column)));
  return SRGB_8BIT_TO_LINEAR[rgba[4 * (r * widthPx + c) + 1]!]!;
}
