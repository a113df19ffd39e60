const wide = (deg: string) => `${deg}° across as seen from the stones`;

/** Half stops as a photographer says them. */
function stops(halves: number): string {
  if (halves === 1) return 'half a stop';
  if (halves === 2) return 'one stop';
  return `${halves % 2 === 0 ? halves / 2 : `${(halves - 1) / 2}½`} stops`;
}

const byWhat = (byBall: boolean) => (byBall ? 'by its ball' : 'by tray, shadows and edges');

const distance = (length: string, pixels: string, pit: string) =>
  `${length} is ${pixels} pixels, and pits from ${pit} on are seen`;
const blur = (pixels: string, onStones: string) =>
  `Edges are ${pixels} pixels soft, ${onStones} on the stones`;

/** Advice on lamp, camera and ball. Numbers come written, lengths and shares with their unit. */
export const rig = {
  lampTooSmall: (deg: string, times: string) =>
    `The lamp is only ${wide(deg)}, too small for this sharpness: its image on a stone drowns in the blur. Make it ${times} times as large, or bring it as much nearer.`,
  lampGood: (deg: string) => `The lamp is ${wide(deg)}: a good size.`,
  lampHopeless: (deg: string) =>
    `The lamp is ${wide(deg)}; at this sharpness no lamp can tell gloss from mirror: bring the camera nearer.`,
  /** The share of its width that would be small enough. */
  lampTooLarge: (deg: string, share: 'half' | 'quarter') =>
    `The lamp is ${wide(deg)}, too large to tell gloss from mirror at this sharpness: ${share === 'half' ? 'halve it or double its distance' : 'make it a quarter as wide'}.`,
  exposureGood: (share: string) =>
    `The ball's highlight reaches ${share} of the camera's limit: well exposed.`,
  /** Share null for a highlight above the limit; change in half stops. */
  exposureOff: (share: string | null, halves: number, isDarker: boolean) =>
    `The ball's highlight ${share === null ? "is above the camera's limit" : `reaches ${share} of the camera's limit`}: take it ${stops(halves)} ${isDarker ? 'darker' : 'brighter'}.`,
  /** How many pixels a length is, and the smallest pit seen. */
  distanceGood: (length: string, pixels: string, pit: string) => `${distance(length, pixels, pit)}.`,
  distanceOff: (length: string, pixels: string, pit: string, share: string) =>
    `${distance(length, pixels, pit)} only: go closer, to ${share} of the distance, or photograph fewer stones in more pixels.`,
  focusGood: (pixels: string, onStones: string) => `${blur(pixels, onStones)}: in focus.`,
  focusOff: (pixels: string, onStones: string) =>
    `${blur(pixels, onStones)}: focus on the stones, hold the camera still and wipe the lens.`,
  /** Told by the ball, or by the scene. */
  asRemembered: (byBall: boolean) => `Lamp and camera stand as remembered (${byWhat(byBall)}).`,
  notAsRemembered: (byBall: boolean) => `Lamp and camera are not as remembered (${byWhat(byBall)}).`,
  lampOff: (deg: string) => `The lamp's direction is ${deg}° off.`,
  lampLooks: (share: string) => `It looks ${share} as wide as it did.`,
  shadowsTurned: (deg: string) => `Shadows fall ${deg}° from where they fell.`,
  scaleChanged: (share: string) => `A pixel covers ${share} of what it covered.`,
  exposureChanged: (share: string, byBall: boolean) =>
    `The exposure is ${share} of the remembered one: ${byBall ? 'the ball makes up for it' : "corrected by the tray's light"}.`,
} as const;
