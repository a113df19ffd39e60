import { surfaceAt, type TrayModel } from './trayModel';

/** Red, green and blue light of the bare tray at one place, linear, 1 = the clipping level. */
export type TrayColor = readonly [red: number, green: number, blue: number];

/** Places from the picture's middle, share of its width and height: the outer ones lie clear of its edge. */
export const TRAY_PLACES = [-0.35, 0, 0.35] as const;

/**
 * Light of the bare tray at nine places, as if nothing lay on it.
 *
 * @param tray - Its model.
 * @returns Three places from left to right in the upper part of the picture, then in its middle, then below.
 */
export function trayLight({ surfaces, floor }: TrayModel): TrayColor[] {
  return TRAY_PLACES.flatMap((y) =>
    TRAY_PLACES.map((x): TrayColor => {
      const [green, red, blue] = surfaces.map((surface) => surfaceAt(surface, x, y)) as [
        number,
        number,
        number,
      ];
      const light = (ln: number, c: 0 | 1 | 2) => Math.max(0, Math.exp(ln) - floor[c]);
      return [light(green + red, 0), light(green, 1), light(green + blue, 2)];
    }),
  );
}
