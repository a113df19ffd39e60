import type { Preview } from '../../src/camera/preview';

/** A frame of 1280 × 720 in which all is well, at 0.2 mm per pixel, but for what is given. */
export function inventedPreview(but: Partial<Preview> = {}): Preview {
  return {
    widthPx: 1280,
    heightPx: 720,
    ballWanted: true,
    ball: { row: 300, column: 400, radiusPx: 40 },
    lampClipped: 0,
    clipped: 0,
    tooDark: false,
    blurPx: 0.2,
    mmPerPx: 0.2,
    rig: null,
    secondLight: false,
    lampPartly: false,
    stones: [{ outline: [], cutOff: false }],
    sketch: { width: 2, light: [0.4, 0.4, 0.3, 0.3] },
    refusal: null,
    ...but,
  };
}
