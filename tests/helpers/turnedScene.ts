/** What tests/golden/turned.jpg shows upright; made by tests/golden/photos.py. */
export const TURNED_SCENE = {
  widthPx: 240,
  heightPx: 320,
  colors: [
    { row: 80, column: 60, rgb: [200, 30, 30] },
    { row: 80, column: 180, rgb: [30, 160, 40] },
    { row: 240, column: 60, rgb: [40, 50, 190] },
    { row: 240, column: 180, rgb: [255, 255, 255] },
  ],
  /** What a JPEG of quality 95 may change in an even area. */
  tolerance: 3,
} as const;
