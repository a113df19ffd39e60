import * as z from 'zod/mini';
import { MATERIAL_NAMES } from '../grading/materials';
import { ACTIONS_BEST_FIRST } from '../grading/opinion';
import { STEPS } from '../grading/steps';
import {
  day,
  kept,
  list,
  notNegative,
  number,
  photoKey,
  pixelPoint,
  positive,
  recordId,
  sentences,
  share,
} from './fields';

export const step = z.enum(STEPS);
export const materialName = z.enum(MATERIAL_NAMES);
export const material = z.nullable(materialName);
export const action = z.enum(ACTIONS_BEST_FIRST);

/** Number of a stone in its photo. */
export const place = z.int().check(z.gte(1), z.lte(9999));

/** Most stones of one photo. */
export const MOST_STONES = 1000;
const MOST_OUTLINE_POINTS = 5000;
const MOST_FLAWS = 10_000;
const MOST_REASONS = 50;
const MOST_INDICES = 20;

const refractiveIndex = z.number().check(z.gte(1), z.lte(4));

const flaw = z.strictObject({
  kind: z.enum(['pit', 'fracture', 'chip', 'scratch']),
  row: number,
  column: number,
  diameterMm: z.exactOptional(notNegative),
  lengthMm: z.exactOptional(notNegative),
  widthMm: z.exactOptional(notNegative),
  confidence: share,
});

const roughnessAtIndex = z.strictObject({
  n: refractiveIndex,
  alpha: notNegative,
  alphaLow: notNegative,
  alphaHigh: notNegative,
});

const gloss = z.strictObject({
  alpha: notNegative,
  alphaLow: notNegative,
  alphaHigh: notNegative,
  gu60: notNegative,
  gu60Low: notNegative,
  gu60High: notNegative,
});

const look = z.strictObject({
  colors: list(number, 15, 15),
  pattern: list(number, 12, 12),
  silhouette: list(number, 72, 72),
  size: z.tuple([notNegative, notNegative, notNegative]),
});

const checkedStone = z.strictObject({
  place,
  outline: list(pixelPoint, MOST_OUTLINE_POINTS, 3),
  lengthMm: notNegative,
  widthMm: notNegative,
  areaMm2: notNegative,
  cutOff: z.boolean(),
  inspectedCm2: notNegative,
  flaws: list(flaw, MOST_FLAWS),
  highlight: z.nullable(z.strictObject({ byIndex: list(roughnessAtIndex, MOST_INDICES, 1) })),
  glossBound: z.nullable(
    z.strictObject({
      byIndex: list(z.strictObject({ n: refractiveIndex, alphaAtLeast: notNegative }), MOST_INDICES, 1),
    }),
  ),
  glossWithheld: z.exactOptional(z.union([z.boolean(), z.literal('second-light')])),
  unlike: z.exactOptional(z.enum(['shadow', 'round', 'ragged', 'photo'])),
  gloss: z.nullable(gloss),
  smoothness: z.number().check(z.gte(0), z.lte(100)),
  action,
  reasons: list(sentences, MOST_REASONS),
  look: z.nullable(look),
});

const limits = z.strictObject({
  maxPitsPerCm2: notNegative,
  maxPitDiameterMm: notNegative,
  maxFractureMm: notNegative,
  setAsideFractureMm: notNegative,
  maxChipMm: notNegative,
  maxScratches: z.nullable(notNegative),
  minFlawConfidence: share,
  minShareOfCeiling: z.nullable(share),
  minLengthMm: notNegative,
});

/** One photo of a batch, measured and judged. */
export const checkRecord = z.strictObject({
  ...kept,
  kind: z.literal('check'),
  batch: recordId,
  faceOf: z.nullable(recordId),
  step,
  material,
  limits,
  day,
  mmPerPx: positive,
  longestPx: z.nullable(positive),
  photo: z.nullable(photoKey),
  stones: list(checkedStone, MOST_STONES),
});
