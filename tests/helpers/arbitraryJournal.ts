import fc from 'fast-check';
import { MATERIAL_NAMES } from '../../src/grading/materials';
import { ACTIONS_BEST_FIRST } from '../../src/grading/opinion';
import { STEPS } from '../../src/grading/steps';
import { mergeRecords } from '../../src/journal/mergeRecords';
import type { KeptPhoto } from '../../src/journal/openJournal';
import type { CheckedStone, CheckRecord, JournalRecord, RecordId } from '../../src/journal/records';

/** Crockford's base 32. */
const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** ULIDs; only a few, so that records meet each other and journals overlap. */
export const anId: fc.Arbitrary<RecordId> = fc
  .constantFrom(...DIGITS)
  .map((digit) => `01J${'0'.repeat(22)}${digit}`);

export const aDay = fc
  .date({ min: new Date('2020-01-01'), max: new Date('2039-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

export const aPhotoKey = fc.stringMatching(/^[0-9a-f]{64}$/);

/** JSON has no −0. */
const aNumber = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((value) => value + 0 || 0);
const aSize = aNumber.map(Math.abs);
const aPositive = aSize.map((value) => value + 0.001);
const aShare = fc.double({ min: 0, max: 1, noNaN: true }).map((value) => value || 0);
const aName = fc.oneof(
  fc.string({ maxLength: 30, unit: 'grapheme' }).filter(({ length }) => length <= 200),
  fc.constantFrom('', '=1+1', '-3', '@home', 'a "b", c', 'two\r\nlines', '__proto__', '\ud800', '‮x'),
);
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const pair = fc.tuple(aNumber, aNumber);
const times = <T>(value: fc.Arbitrary<T>, count: number) =>
  fc.array(value, { minLength: count, maxLength: count });
/** An object as JSON gives it: all fields, or all but some of those named. */
const whole = <T>(model: { [F in keyof T]: fc.Arbitrary<T[F]> }): fc.Arbitrary<T> =>
  fc.record(model as never, { noNullPrototype: true }) as fc.Arbitrary<T>;
const fields = <T, K extends keyof T>(
  model: { [F in keyof T]: fc.Arbitrary<T[F]> },
  leftOut: readonly K[],
): fc.Arbitrary<Omit<T, K> & Partial<Pick<T, K>>> => {
  const requiredKeys = Object.keys(model).filter((key) => !leftOut.includes(key as never));
  return fc.record(model as never, { requiredKeys: requiredKeys as never, noNullPrototype: true }) as never;
};

const aStep = fc.constantFrom(...STEPS);
const aMaterial = orNull(fc.constantFrom(...MATERIAL_NAMES));
const anAction = fc.constantFrom(...ACTIONS_BEST_FIRST);

const kept = { id: anId, corrects: anId };

const aLook = whole<NonNullable<CheckedStone['look']>>({
  colors: times(aNumber, 15),
  pattern: times(aNumber, 12),
  silhouette: times(aShare, 72),
  size: fc.tuple(aSize, aSize, aSize),
});

const aFlaw = fields(
  {
    kind: fc.constantFrom('pit' as const, 'fracture' as const, 'chip' as const, 'scratch' as const),
    row: aNumber,
    column: aNumber,
    diameterMm: aSize,
    lengthMm: aSize,
    widthMm: aSize,
    confidence: aShare,
  },
  ['diameterMm', 'lengthMm', 'widthMm'],
);

const aRoughness = whole({
  n: fc.constantFrom(1.43, 1.54, 1.65, 1.77),
  alpha: aSize,
  alphaLow: aSize,
  alphaHigh: aSize,
});

const aCheckedStone: fc.Arbitrary<CheckedStone> = fields(
  {
    place: fc.integer({ min: 1, max: 40 }),
    outline: fc.array(pair, { minLength: 3, maxLength: 8 }),
    lengthMm: aSize,
    widthMm: aSize,
    areaMm2: aSize,
    cutOff: fc.boolean(),
    inspectedCm2: aSize,
    flaws: fc.array(aFlaw, { maxLength: 4 }),
    highlight: orNull(whole({ byIndex: fc.array(aRoughness, { minLength: 1, maxLength: 4 }) })),
    glossBound: orNull(
      whole({
        byIndex: fc.array(whole({ n: fc.constantFrom(1.43, 1.54), alphaAtLeast: aSize }), {
          minLength: 1,
          maxLength: 2,
        }),
      }),
    ),
    glossWithheld: fc.constantFrom(true, false, 'second-light' as const),
    gloss: orNull(
      whole({
        alpha: aSize,
        alphaLow: aSize,
        alphaHigh: aSize,
        gu60: aSize,
        gu60Low: aSize,
        gu60High: aSize,
      }),
    ),
    smoothness: aShare.map((share) => 100 * share),
    action: anAction,
    reasons: fc.array(aName, { maxLength: 3 }),
    look: orNull(aLook),
  },
  ['glossWithheld'],
);

const someLimits: fc.Arbitrary<CheckRecord['limits']> = whole({
  maxPitsPerCm2: aSize,
  maxPitDiameterMm: aSize,
  maxFractureMm: aSize,
  setAsideFractureMm: aSize,
  maxChipMm: aSize,
  maxScratches: orNull(aSize),
  minFlawConfidence: aShare,
  minShareOfCeiling: orNull(aShare),
  minLengthMm: aSize,
});

const aRig = fields(
  {
    mmPerPx: aPositive,
    light: whole({
      direction: fc.tuple(aShare, aShare, aShare),
      angularDiameterDeg: fc.double({ min: 0.1, max: 90, noNaN: true }),
    }),
    lampRadiance: aPositive,
    sourceSlope: aPositive,
    lampTurnRad: orNull(aShare),
    blurPx: aSize,
    lampColor: fc.tuple(aSize, aSize, aSize),
    scene: fields(
      {
        widthPx: aPositive,
        heightPx: aPositive,
        focalLength35Mm: orNull(aPositive),
        exposure: orNull(aPositive),
        ballAt: orNull(pair),
        tray: times(fc.tuple(aNumber, aNumber, aNumber), 9),
        shadow: orNull(whole({ turnDeg: aNumber, reach: aSize, likeness: aShare, at: pair })),
        roomShare: aShare,
        edgeBlurPx: orNull(aSize),
      },
      ['exposure', 'roomShare'],
    ),
  },
  ['lampColor', 'scene'],
);

/** A record of any kind, all fields of their full range, with or without what may be left out. */
const aKind = <K extends JournalRecord['kind']>(kind: K) => fc.constant(kind);
const first = ['corrects'] as const;
const batch = anId;
const aRecordOf = {
  machine: fields(
    {
      ...kept,
      kind: aKind('machine'),
      name: aName,
      type: fc.constantFrom('rotary' as const, 'vibratory' as const),
      capacityKg: orNull(aPositive),
    },
    first,
  ),
  batch: fields(
    {
      ...kept,
      kind: aKind('batch'),
      name: aName,
      machine: orNull(anId),
      startedOn: aDay,
      materials: fc.array(fc.constantFrom(...MATERIAL_NAMES), { maxLength: 3 }),
      source: aName,
      isOver: fc.boolean(),
    },
    first,
  ),
  run: fields(
    {
      ...kept,
      kind: aKind('run'),
      batch,
      machine: orNull(anId),
      step: aStep,
      startedOn: aDay,
      endedOn: orNull(aDay),
      charge: aName,
    },
    first,
  ),
  stone: fields(
    {
      ...kept,
      kind: aKind('stone'),
      batch,
      name: aName,
      material: aMaterial,
      source: aName,
      isFavorite: fc.boolean(),
    },
    first,
  ),
  check: fields(
    {
      ...kept,
      kind: aKind('check'),
      batch,
      faceOf: orNull(anId),
      step: aStep,
      material: aMaterial,
      limits: someLimits,
      day: aDay,
      mmPerPx: aPositive,
      longestPx: orNull(aPositive),
      photo: orNull(aPhotoKey),
      stones: fc.array(aCheckedStone, { maxLength: 3 }),
    },
    first,
  ),
  identity: fields(
    {
      ...kept,
      kind: aKind('identity'),
      batch,
      check: anId,
      stones: fc.array(
        whole({ place: fc.integer({ min: 1, max: 40 }), stone: anId, confidence: orNull(aShare) }),
        { maxLength: 4 },
      ),
    },
    first,
  ),
  decision: fields(
    { ...kept, kind: aKind('decision'), batch, check: anId, stone: anId, action: anAction },
    first,
  ),
  withdrawal: fields(
    { ...kept, kind: aKind('withdrawal'), batch, of: anId, isWithdrawn: fc.boolean() },
    first,
  ),
  rig: fields({ ...kept, kind: aKind('rig'), name: aName, rig: aRig }, first),
};

export const aRecord: fc.Arbitrary<JournalRecord> = fc.oneof(...Object.values(aRecordOf));

/** Records of a journal: sorted, each id once; what they point at may be missing. */
export const aJournal: fc.Arbitrary<JournalRecord[]> = fc
  .array(aRecord, { maxLength: 12 })
  .map((records) => mergeRecords(records, []));

/** Pictures that begin as a JPEG does, with no frame of any size in them. */
const aPicture = fc.uint8Array({ maxLength: 60, max: 0xfe }).map(
  (bytes) =>
    new Blob([Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), bytes as Uint8Array<ArrayBuffer>], {
      type: 'image/jpeg',
    }),
);

export const aPhoto: fc.Arbitrary<KeptPhoto> = whole({
  key: aPhotoKey,
  photo: aPicture,
  thumbnail: aPicture,
});
