import * as z from 'zod/mini';
import { kept, line, list, notNegative, number, pixelPoint, positive } from './fields';

const threeNumbers = z.tuple([number, number, number]);
const color = z.tuple([notNegative, notNegative, notNegative]);
const cosine = z.number().check(z.gte(-1), z.lte(1));

const shadow = z.strictObject({
  turnDeg: number,
  reach: number,
  likeness: number,
  at: pixelPoint,
});

const scene = z.strictObject({
  widthPx: positive,
  heightPx: positive,
  focalLength35Mm: z.nullable(positive),
  exposure: z.exactOptional(z.nullable(positive)),
  ballAt: z.nullable(pixelPoint),
  tray: list(threeNumbers, 9, 9),
  shadow: z.nullable(shadow),
  roomShare: z.exactOptional(number),
  edgeBlurPx: z.nullable(notNegative),
});

const rig = z.strictObject({
  mmPerPx: positive,
  light: z.strictObject({
    direction: z.tuple([cosine, cosine, cosine]),
    angularDiameterDeg: z.number().check(z.gt(0), z.lte(180)),
  }),
  lampRadiance: positive,
  sourceSlope: positive,
  lampTurnRad: z.nullable(number),
  blurPx: notNegative,
  lampColor: z.exactOptional(color),
  scene: z.exactOptional(scene),
});

/** A remembered lamp and camera. */
export const rigRecord = z.strictObject({ ...kept, kind: z.literal('rig'), name: line, rig });
