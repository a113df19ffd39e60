/** Angles of incidence at which specular gloss is measured, degrees. */
export type GlossAngleDeg = 20 | 60 | 85;

/** Full angular size of an aperture, degrees, in and across the plane of measurement. */
export interface Aperture {
  readonly inPlaneDeg: number;
  readonly acrossDeg: number;
}

/** How an instrument lights a surface and looks at it: both windows are centered on the mirrored ray. */
export interface MeterGeometry {
  /** Angle of incidence, degrees from the surface normal. */
  readonly angleDeg: number;
  /** Image of the lamp seen by the receptor. */
  readonly source: Aperture;
  /** Window of the receptor, at least as wide as the source. */
  readonly receptor: Aperture;
}

/** Image of the lamp seen by the receptor. Source: ISO 2813, table of angular apertures. */
export const SOURCE_APERTURE: Aperture = { inPlaneDeg: 0.75, acrossDeg: 2.5 };

/** Receptor windows. Source: ISO 2813 / ASTM D523, table of angular apertures. */
export const RECEPTOR_APERTURES: Readonly<Record<GlossAngleDeg, Aperture>> = {
  20: { inPlaneDeg: 1.8, acrossDeg: 3.6 },
  60: { inPlaneDeg: 4.4, acrossDeg: 11.7 },
  85: { inPlaneDeg: 4, acrossDeg: 6 },
};

/** The three geometries of specular gloss. Source: ISO 2813 / ASTM D523. */
export const GLOSS_GEOMETRIES: Readonly<Record<GlossAngleDeg, MeterGeometry>> = {
  20: { angleDeg: 20, source: SOURCE_APERTURE, receptor: RECEPTOR_APERTURES[20] },
  60: { angleDeg: 60, source: SOURCE_APERTURE, receptor: RECEPTOR_APERTURES[60] },
  85: { angleDeg: 85, source: SOURCE_APERTURE, receptor: RECEPTOR_APERTURES[85] },
};

/** Refractive index of the polished black glass that reads 100 gloss units. Source: ISO 2813 / ASTM D523. */
export const GLOSS_STANDARD_INDEX = 1.567;
