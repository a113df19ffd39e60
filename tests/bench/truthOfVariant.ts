import type { GlossTruth, TrueGlossStone } from './glossTruth';

/**
 * The truth of a scene as it is in one developed photo: its faults, and places and scale when it was made smaller.
 *
 * @param truth - In pixels of the render.
 * @param variant - Name of the photo; one that the truth does not list is as the scene is.
 * @returns Pixel (0, 0) is the center of the upper left pixel, before and after.
 */
export function truthOfVariant(truth: GlossTruth, variant: string): GlossTruth {
  const listed = truth.variants?.find((one) => one.variant === variant);
  const scale = listed?.scale ?? 1;
  const faults = listed?.faults ?? truth.faults ?? [];
  const { ball } = truth;
  return {
    ...truth,
    faults,
    mmPerPx: truth.mmPerPx / scale,
    ball: {
      ...ball,
      row: scaled(ball.row, scale),
      column: scaled(ball.column, scale),
      radiusPx: ball.radiusPx * scale,
    },
    stones: truth.stones.map((stone) => scaledStone(stone, scale)),
  };
}

function scaledStone(stone: TrueGlossStone, scale: number): TrueGlossStone {
  const { outline, center, highlight, flaws, decoys } = stone;
  const at = <T extends { readonly row: number; readonly column: number }>(place: T): T => ({
    ...place,
    row: scaled(place.row, scale),
    column: scaled(place.column, scale),
  });
  const point = ([row, column]: readonly [number, number]) =>
    [scaled(row, scale), scaled(column, scale)] as const;
  return {
    ...stone,
    outline: outline.map(point),
    center: point(center),
    flaws: flaws.map((flaw) => ({ ...at(flaw), ...(flaw.path && { path: flaw.path.map(point) }) })),
    decoys: decoys.map(at),
    ...(highlight && { highlight: at(highlight) }),
  };
}

const scaled = (place: number, scale: number) => (place + 0.5) * scale - 0.5;
