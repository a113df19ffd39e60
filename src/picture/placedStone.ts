import type { PixelPoint } from '../analysis/report';
import { STONE_SHADE } from './keepsakeGround';
import { outlinePath } from './outlinePath';
import { stoneBox } from './stoneBox';
import { svgNumber } from './svgNumber';

/** A stone as a photo shows it. */
export interface PicturedStone {
  /** Pixels of the measured photo. */
  readonly outline: readonly PixelPoint[];
  readonly mmPerPx: number;
}

/** Where a stone's cut-out goes in a picture. */
export interface PlacedStone {
  /** Of the picture, px: there the middle of the box around the outline goes. */
  readonly x: number;
  readonly y: number;
  /** Picture pixels in one pixel of the measured photo. */
  readonly scale: number;
  /** Clockwise, about that middle. */
  readonly turnDeg: number;
  /** Middle of the box around the outline, pixels of the measured photo. */
  readonly middle: PixelPoint;
}

/** A drawn picture with room for photographs. */
export interface Keepsake {
  /** An SVG document of the picture without the photographs. */
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** One for each stone, in the order they were given. */
  readonly places: readonly PlacedStone[];
}

/** Height and width of a stone once it is turned, mm. */
export function turnedSize({ outline, mmPerPx }: PicturedStone, turnDeg: number) {
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const turned = outline.map(
    ([row, column]): PixelPoint => [row * cos + column * sin, column * cos - row * sin],
  );
  const { width, height } = stoneBox(turned);
  return { widthMm: width * mmPerPx, heightMm: height * mmPerPx };
}

/**
 * Puts a stone at a place.
 *
 * @param x - Middle, px.
 * @param y - Middle, px.
 * @param pxPerMm - Picture pixels in a millimeter.
 */
export function placeStone(
  stone: PicturedStone,
  x: number,
  y: number,
  pxPerMm: number,
  turnDeg: number,
): PlacedStone {
  const { row, column, width, height } = stoneBox(stone.outline);
  const middle: PixelPoint = [row + height / 2, column + width / 2];
  return { x, y, scale: stone.mmPerPx * pxPerMm, turnDeg, middle };
}

/** The stone's shape as a plain pebble with its shadow: the photograph goes over it, and where none was kept it stays. */
export function stoneShape({ outline }: PicturedStone, place: PlacedStone): string {
  const path = outlinePath(outline, 0.3 / place.scale);
  const [row, column] = place.middle.map((value) => svgNumber(-value));
  const turned = `rotate(${svgNumber(place.turnDeg)}) scale(${Math.round(place.scale * 1e4) / 1e4}) translate(${column} ${row})`;
  const at = (down: number) => `translate(${svgNumber(place.x)} ${svgNumber(place.y + down)}) ${turned}`;
  const shadow = `<g filter="url(#soft)"><path d="${path}" transform="${at(9)}" fill="${STONE_SHADE.shadow}"/></g>`;
  return `${shadow}<path d="${path}" transform="${at(0)}" fill="${STONE_SHADE.body}"/>`;
}
