/** Lamp and camera as far as advice about them needs it; a report's rig fits it. */
export interface RigNumbers {
  readonly mmPerPx: number;
  readonly light: {
    /** Unit vector to the lamp: x right, y up, z to the camera. */
    readonly direction: readonly [number, number, number];
    readonly angularDiameterDeg: number;
  };
  /** Linear radiance of the lamp's image in a perfect mirror, 1 = the camera's limit. */
  readonly lampRadiance: number;
  /** Tangent of the radius of the disc of surface normals that mirror the lamp. */
  readonly sourceSlope: number;
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
}

/** One thing about lamp or camera: in order, or what to do about it. */
export interface Advice {
  readonly about: 'lamp' | 'exposure' | 'distance' | 'focus';
  readonly inOrder: boolean;
  /** One sentence for the person. */
  readonly sentence: string;
}

/** Radius of curvature of a tumbled stone where it mirrors the lamp, mm. Common practice: stones of about 2 to 3 cm. */
export const STONE_RADIUS_MM = 10;
