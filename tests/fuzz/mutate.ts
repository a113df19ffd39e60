import type { Base } from './bases';
import { repaired, sizeFields } from './repair';
import type { Seeded } from './seeded';

/** A mutated file and what was done to it. */
export interface Mutation {
  readonly bytes: Uint8Array;
  readonly how: string;
}

/** Bytes in which the boxes, chunks and segments lie that say what follows. */
const HEAD_BYTES = 700;
/** Share of the mutated files whose checksums and lengths are put right again. */
const REPAIRED_SHARE = 0.5;
const ODD_BYTES = [0, 1, 0x7f, 0x80, 0xfe, 0xff];

type Mutate = (bytes: Uint8Array, random: Seeded, base: Base, all: readonly Base[]) => Uint8Array;

const WAYS: Readonly<Record<string, Mutate>> = {
  'bits flipped': (bytes, random) => {
    const flipped = bytes.slice();
    for (let k = random.one([1, 1, 2, 4, 16, 64]); k > 0; k--) {
      const at = placeIn(bytes, random);
      flipped[at] = flipped[at]! ^ (1 << random.whole(0, 7));
    }
    return flipped;
  },
  'cut short': (bytes, random) => bytes.slice(0, random.whole(0, bytes.length - 1)),
  'bytes replaced': (bytes, random) => {
    const replaced = bytes.slice();
    const at = placeIn(bytes, random);
    const end = Math.min(bytes.length, at + random.one([1, 2, 4, 8, 64, 1000]));
    const value = random.one(ODD_BYTES);
    const isNoise = random.next() < 0.5;
    for (let i = at; i < end; i++) replaced[i] = isNoise ? random.whole(0, 255) : value;
    return replaced;
  },
  'bytes taken out': (bytes, random) => {
    const at = placeIn(bytes, random);
    return joined(bytes.subarray(0, at), bytes.subarray(at + random.one([1, 2, 4, 16, 300])));
  },
  'bytes put in twice': (bytes, random) => {
    const at = placeIn(bytes, random);
    const piece = bytes.subarray(at, at + random.one([1, 4, 16, 300, 5000]));
    return joined(bytes.subarray(0, at), piece, piece, bytes.subarray(at + piece.length));
  },
  'head of another': (bytes, random, base, all) => {
    const others = all.filter((one) => one !== base && (random.next() < 0.3 || one.kind === base.kind));
    const other = random.one(others.length > 0 ? others : all);
    const at = random.whole(4, HEAD_BYTES);
    return joined(
      other.bytes.subarray(0, at),
      bytes.subarray(random.next() < 0.5 ? at : placeIn(bytes, random)),
    );
  },
  'two in one': (bytes, random, base, all) => {
    const other = random.one(all.filter(({ kind }) => kind === base.kind));
    const at = placeIn(bytes, random);
    return joined(bytes.subarray(0, at), other.bytes, bytes.subarray(at));
  },
  'another size': (bytes, random, { kind }) => {
    const resized = bytes.slice();
    for (const { at, length } of sizeFields(kind, bytes)) {
      if (random.next() < 0.3) continue;
      const value = random.one([0, 1, 199, 200, 400, 2000, 7000, 16_383, 65_535, 0x7fffffff, 0xffffffff]);
      for (let i = 0; i < length; i++)
        resized[at + i] = value >>> (8 * (kind === 'webp' ? i : length - 1 - i));
    }
    return resized;
  },
};

/** Bits flipped among the pixels leave most pictures readable, so that what follows the decoder has work too. */
const OFTEN = [...Object.keys(WAYS), 'bits flipped', 'bits flipped', 'bits flipped'];

/** Changes a file in one way, sometimes two, all drawn from `random`. */
export function mutate(base: Base, all: readonly Base[], random: Seeded): Mutation {
  let { bytes } = base;
  const done: string[] = [];
  for (let k = random.one([1, 1, 1, 2]); k > 0; k--) {
    const name = random.one(OFTEN);
    bytes = WAYS[name]!(bytes, random, base, all);
    done.push(name);
  }
  if (random.next() < REPAIRED_SHARE) {
    bytes = repaired(base.kind, bytes);
    done.push('repaired');
  }
  return { bytes, how: done.join(', ') };
}

/** Often among the first bytes, where much hangs on each. */
function placeIn(bytes: Uint8Array, random: Seeded): number {
  const reach = random.next() < 0.35 ? Math.min(HEAD_BYTES, bytes.length) : bytes.length;
  return random.whole(0, Math.max(0, reach - 1));
}

function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(pieces));
}
