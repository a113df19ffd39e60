import type { Warning } from '../image/notice';
import type { StoneLook } from '../measure/stoneLook';

/** Row and column in pixels of the upright full-size photo. */
export type PixelPoint = readonly [row: number, column: number];

export interface BallReport {
  readonly row: number;
  readonly column: number;
  readonly radiusPx: number;
}

export interface LightReport {
  /** Unit vector to the lamp: x right, y up, z to the camera. */
  readonly direction: readonly [number, number, number];
  readonly angularDiameterDeg: number;
}

/** What a fixed lamp and camera give once and for all; read off a photo with the ball. */
export interface Rig {
  readonly mmPerPx: number;
  readonly light: LightReport;
  /** Linear radiance of the lamp's image in a perfect mirror, in units of the clipping level. */
  readonly lampRadiance: number;
  /** Tangent of the radius of the disc, equal in area, of the surface normals that mirror the lamp. */
  readonly sourceSlope: number;
  /** Turn of a square lamp's sides, radians from right toward up, 0 to π/2; null for a round lamp. */
  readonly lampTurnRad: number | null;
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
  /** The lamp's color: red, green and blue over their luminance; white when left out. */
  readonly lampColor?: readonly [number, number, number];
  /** What the same photo showed beside the ball; left out in rigs saved before this was read. */
  readonly scene?: RigScene;
}

/** What a photo shows of lamp and camera beside the ball, so that photos without one can be compared. */
export interface RigScene {
  readonly widthPx: number;
  readonly heightPx: number;
  /** From the file's EXIF data; null when it says none. */
  readonly focalLength35Mm: number | null;
  /** Light let in by what the file says, see `Photo.exposure`; null or left out when it does not say. */
  readonly exposure?: number | null;
  /** Where the ball lay; null without one. */
  readonly ballAt: PixelPoint | null;
  /** Red, green and blue light of the bare tray at nine places, row by row; linear, 1 = the clipping level. */
  readonly tray: readonly (readonly [number, number, number])[];
  readonly shadow: SceneShadow | null;
  /** Share of the tray's light left in full shadow beside the ball: what comes from the room. Left out without one. */
  readonly roomShare?: number;
  /** Blur of the sharpest edges at the stones, photo pixels; null without edges. */
  readonly edgeBlurPx: number | null;
}

export type RigChangeCode =
  | 'lamp-moved'
  | 'camera-moved'
  | 'focus-lost'
  | 'exposure-changed'
  | 'tray-changed';

/** Shadows that stones and ball throw on the tray. */
export interface SceneShadow {
  /** Direction in which they fall, degrees from right toward up. */
  readonly turnDeg: number;
  /** How far they reach past a stone, in radii of the mean stone. */
  readonly reach: number;
  /** How like drawn shadows they look, 0 to 1. */
  readonly likeness: number;
  /** Middle of the stones that throw them. */
  readonly at: PixelPoint;
}

/** A photo's lamp and camera against the remembered ones; a number is null when the photo does not tell it. */
export interface RigCheck {
  /** True when the photo's own ball was read: it is then measured by that, and only later photos are at stake. */
  readonly byBall: boolean;
  /** What has changed; empty while the rig holds. */
  readonly changes: readonly RigChangeCode[];
  /** Angle between the lamp's directions then and now, the ball's place allowed for; with the ball only. */
  readonly lampOffDeg: number | null;
  /** Lamp's angular size now, as a share of the remembered one; with the ball only. */
  readonly lampSizeRatio: number | null;
  /** Turn of the shadows' direction, degrees. */
  readonly shadowTurnDeg: number | null;
  /** Largest share by which the light falls off otherwise across the picture. */
  readonly trayTilt: number | null;
  /** Millimeters per pixel now, as a share of the remembered ones. */
  readonly scaleRatio: number | null;
  /** Camera blur now and then, photo pixels. */
  readonly blurPx: readonly [now: number, then: number] | null;
  /** Light recorded of the same thing now, as a share of the remembered one. */
  readonly exposureRatio: number | null;
}

/** Roughness fitted under the assumption of one refractive index. */
export interface RoughnessAtIndex {
  readonly n: number;
  readonly alpha: number;
  /** Ends of the 90 % interval. */
  readonly alphaLow: number;
  readonly alphaHigh: number;
}

export interface HighlightReport {
  readonly row: number;
  readonly column: number;
  /** One entry per assumed refractive index, ascending in n; interpolate in between. */
  readonly byIndex: readonly RoughnessAtIndex[];
  /** Share of lamp's and room's light that the stone itself sends back, 0 to 1; null or left out when not seen. */
  readonly bodyReflectance?: number | null;
  /** Light as recorded, 1 = the camera's limit: of the highlight above the stone, and of the stone under it. */
  readonly levels?: { readonly height: number; readonly body: number };
  /** Further images of the lamp on the same stone, read on their own; left out when there are none. */
  readonly further?: readonly FurtherHighlight[];
  /** Mean radiance over the highlight's rings, as a share of a perfect polish: for the drawing of the profile. */
  readonly profile: {
    /** Distance from the highlight's center in lamp radii. */
    readonly distance: readonly number[];
    readonly measured: readonly number[];
    readonly model: readonly number[];
  };
}

/** A further image of the lamp on a stone, such as on another facet. */
export interface FurtherHighlight {
  readonly row: number;
  readonly column: number;
  readonly byIndex: readonly RoughnessAtIndex[];
}

/** Waves of the skin, such as orange peel, read off the outline of the mirrored lamp; not part of the roughness. */
export interface WavinessReport {
  /** Root mean square of the waves' slope along one direction, degrees; null when no waves are seen. */
  readonly slopeDeg: number | null;
  /** Ends of the 90 % interval; without waves from 0 to what they have at most (95 %). */
  readonly slopeLowDeg: number;
  readonly slopeHighDeg: number;
  /** Likeliest length of the waves; null when no waves are seen. */
  readonly wavelengthMm: number | null;
  /** Longest waves that can be told from the stone's own shape. */
  readonly longestMm: number;
}

/** A place inside the lamp's image that hardly mirrors it: a pit, frosting, an undercut grain. */
export interface DullPatchReport {
  readonly row: number;
  readonly column: number;
  /** As seen from the camera. */
  readonly areaMm2: number;
  /** Light that its darkest place mirrors, share of what the skin around it does, 0 to 1. */
  readonly share: number;
}

/** How even a stone's skin is where it mirrors the lamp. */
export interface SkinReport {
  /** Null where the lamp's image is too soft, too small or too broken to tell. */
  readonly waviness: WavinessReport | null;
  /** The largest first. */
  readonly dullPatches: readonly DullPatchReport[];
}

/** What a stone without a readable highlight can still be said to be. */
export interface GlossBound {
  /** Roughness that it has at least, for the same refractive indices as a highlight's; 0 when it may be a mirror. */
  readonly byIndex: readonly { readonly n: number; readonly alphaAtLeast: number }[];
}

export type FlawKind = 'pit' | 'fracture' | 'chip' | 'scratch';

export interface FlawReport {
  readonly kind: FlawKind;
  readonly row: number;
  readonly column: number;
  /** Pits and chips: diameter of the circle of equal area, foreshortening undone. */
  readonly diameterMm?: number;
  /** Fractures and scratches: length along the flaw, foreshortening undone. */
  readonly lengthMm?: number;
  /** Scratches: width of the groove by the light that it adds; good to a factor of two or three. Left out where it adds none. */
  readonly widthMm?: number;
  /** Fractures and scratches: the line itself, end to end. */
  readonly path?: readonly PixelPoint[];
  /** 0 to 1. */
  readonly confidence: number;
  /** Whether its shading follows the lamp from one photo to the next; left out where no second photo tells. */
  readonly followsLamp?: boolean;
}

export interface StoneReport {
  /** 1, 2, 3 … in reading order. */
  readonly id: number;
  readonly center: PixelPoint;
  /** Closed polygon, last point not repeated. */
  readonly outline: readonly PixelPoint[];
  readonly areaMm2: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  /** True when the photo's edge cuts the stone off. */
  readonly cutOff: boolean;
  readonly highlight: HighlightReport | null;
  /** Given when there is no highlight. */
  readonly glossBound: GlossBound | null;
  /** Left out where no highlight was fitted, or one as wide as the stone. */
  readonly skin?: SkinReport;
  readonly flaws: readonly FlawReport[];
  /** Surface actually inspected for flaws, foreshortening undone. */
  readonly inspectedCm2: number;
  /** What it looks like, to know it again at the next check. */
  readonly look: StoneLook;
  /** Why gloss was not read: true when the rig no longer holds, or the light that its highlight mirrors; left out otherwise. */
  readonly glossWithheld?: boolean | 'second-light';
  /** Left out where nothing speaks against it. */
  readonly unlike?: Unlike;
}

/**
 * What speaks against a thing being a stone that can be judged: its shadow is not one that a stone throws, it is round or
 * its own mirror image as only made or grown things are, it is longer or more ragged than tumbling leaves a stone, or a
 * warning about the whole photo stands against all that is on it.
 */
export type Unlike = 'shadow' | 'round' | 'ragged' | 'photo';

/** All that is measured in one photo; independent of step, material and limits. */
export interface PhotoReport {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly mmPerPx: number;
  readonly ball: BallReport | null;
  readonly light: LightReport | null;
  readonly rig: Rig;
  /** Against the rig given; null or left out when none was given or it is too old to compare. */
  readonly rigCheck?: RigCheck | null;
  /** Unit vectors to sources of light beside the lamp, brightest first; left out when the ball shows none. */
  readonly secondLights?: readonly (readonly [number, number, number])[];
  readonly warnings: readonly Warning[];
  /** What a second photo with the lamp elsewhere shows of this tray: stones and ball found in both, and how far the tray was turned, degrees; left out without one. */
  readonly lampMoved?: { readonly inBoth: number; readonly turnDeg: number };
  /** Light in each shot of the scene as a share of the first, the first included; left out for a single photo. */
  readonly exposureRatios?: readonly number[];
  readonly stones: readonly StoneReport[];
}
