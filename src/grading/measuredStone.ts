/** Roughness of a highlight under the assumption of one refractive index. */
export interface RoughnessAtIndex {
  readonly n: number;
  /** GGX roughness, unitless. */
  readonly alpha: number;
  /** Ends of the 90 % interval. */
  readonly alphaLow: number;
  readonly alphaHigh: number;
}

/** A highlight as far as grading needs it. */
export interface MeasuredHighlight {
  /** One refractive index or more, ascending in n. */
  readonly byIndex: readonly RoughnessAtIndex[];
  /** Share of light that the stone itself sends back, 0 to 1; null or left out when it was not seen. */
  readonly bodyReflectance?: number | null;
  /** Further images of the lamp on the same stone, with their places in the photo; left out when there are none. */
  readonly further?: readonly MeasuredFurther[];
}

export interface MeasuredFurther {
  readonly row: number;
  readonly column: number;
  readonly byIndex: readonly RoughnessAtIndex[];
}

/** What the lack of a highlight tells, as far as grading needs it. */
export interface MeasuredBound {
  /** Least roughness for one refractive index or more, ascending in n. */
  readonly byIndex: readonly { readonly n: number; readonly alphaAtLeast: number }[];
}

/** A flaw as far as grading needs it. */
export interface MeasuredFlaw {
  readonly kind: 'pit' | 'fracture' | 'chip' | 'scratch';
  readonly diameterMm?: number;
  readonly lengthMm?: number;
  /** Scratches: width of the groove, good to a factor of two or three. */
  readonly widthMm?: number;
  /** 0 to 1. */
  readonly confidence: number;
}

/** How even a stone's skin is where it mirrors the lamp. */
export interface MeasuredSkin {
  /** Slopes are root mean squares along one direction, degrees; null where the lamp's image is too soft to tell. */
  readonly waviness: {
    /** Null when no waves are seen, as is their length. */
    readonly slopeDeg: number | null;
    readonly slopeLowDeg: number;
    readonly slopeHighDeg: number;
    readonly wavelengthMm: number | null;
    readonly longestMm: number;
  } | null;
  /** Places inside the lamp's image that hardly mirror it, in photo pixels and mm². */
  readonly dullPatches: readonly {
    readonly row: number;
    readonly column: number;
    readonly areaMm2: number;
    readonly share: number;
  }[];
}

/** A stone as far as grading needs it; what a photo's report holds of each stone fits it. */
export interface MeasuredStone {
  readonly id: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly areaMm2: number;
  /** True when the photo's edge cuts the stone off. */
  readonly cutOff: boolean;
  readonly highlight: MeasuredHighlight | null;
  /** Null when there is a highlight, or nothing can be said. */
  readonly glossBound: MeasuredBound | null;
  /** True when gloss was not read because lamp or camera moved, or the light that its highlight mirrors. */
  readonly glossWithheld?: boolean | 'second-light';
  /** What speaks against its being a stone that can be judged; left out where nothing does. */
  readonly unlike?: 'shadow' | 'round' | 'ragged' | 'photo';
  /** Left out when no highlight was fitted, or one as wide as the stone. */
  readonly skin?: MeasuredSkin;
  readonly flaws: readonly MeasuredFlaw[];
  /** Surface inspected for flaws, foreshortening undone. */
  readonly inspectedCm2: number;
}
