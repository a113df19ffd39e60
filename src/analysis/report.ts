import type { Warning } from '../image/notice';

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
  /** Share of light that the stone itself sends back beside the highlight, 0 to 1; null or left out when not seen. */
  readonly bodyReflectance?: number | null;
  /** Mean radiance over the highlight's rings, as a share of a perfect polish: for the drawing of the profile. */
  readonly profile: {
    /** Distance from the highlight's center in lamp radii. */
    readonly distance: readonly number[];
    readonly measured: readonly number[];
    readonly model: readonly number[];
  };
}

export type FlawKind = 'pit' | 'fracture' | 'chip' | 'scratch';

export interface FlawReport {
  readonly kind: FlawKind;
  readonly row: number;
  readonly column: number;
  /** Pits and chips: diameter of the circle of equal area, as seen from the camera. */
  readonly diameterMm?: number;
  /** Fractures and scratches: length along the flaw, as seen from the camera. */
  readonly lengthMm?: number;
  /** 0 to 1. */
  readonly confidence: number;
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
  readonly flaws: readonly FlawReport[];
  /** Surface actually inspected for flaws, foreshortening undone. */
  readonly inspectedCm2: number;
}

/** All that is measured in one photo; independent of step, material and limits. */
export interface PhotoReport {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly mmPerPx: number;
  readonly ball: BallReport | null;
  readonly light: LightReport | null;
  readonly rig: Rig;
  readonly warnings: readonly Warning[];
  readonly stones: readonly StoneReport[];
}
