import { MATERIAL_NAMES } from '../../src/grading/materials';
import { STEPS } from '../../src/grading/steps';
import type { StoneDigest } from '../../src/history/batchDigest';
import { inventedDigest, inventedGloss } from './inventedDigest';

const SOURCES = ['Dry Creek', 'Far Ridge', 'Old quarry', 'Bucket of the neighbor', 'Lake shore', ''];
const BATCH_SIZE = 12;

/**
 * Stones as years of tumbling leave them: batches of twelve, materials that differ, some still in coarse, some set
 * aside. The same for the same count.
 */
export function inventedJournal(count: number) {
  const random = uniform(count + 11);
  const batchNames = new Map<string, string>();
  const stones = Array.from({ length: count }, (_, place) => {
    const batch = Math.floor(place / BATCH_SIZE);
    batchNames.set(`batch-${batch}`, `Barrel ${batch + 1}`);
    return inventedStone(place, `batch-${batch}`, random);
  });
  return { stones, batchNames };
}

function inventedStone(place: number, batch: string, random: () => number): StoneDigest {
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const kind = Math.floor(MATERIAL_NAMES.length * random() ** 2);
  const weeks = Math.max(1, Math.round(4 + (kind % 7) + 2 * normal()));
  const fate = random();
  const isInCoarse = fate < 0.2;
  const share = Math.min(1.01, 0.93 - 0.03 * (kind % 9) - 0.06 * Math.abs(normal()));
  const length = 18 + 22 * random();
  const loss = Math.max(-0.01, 0.012 * weeks + 0.02 * normal());
  return inventedDigest({
    stone: `stone-${place}`,
    batch,
    name: String((place % BATCH_SIZE) + 1),
    material: random() < 0.05 ? null : (MATERIAL_NAMES[kind] ?? null),
    source: SOURCES[Math.floor(SOURCES.length * random())] ?? '',
    isFavorite: random() < 24 / 6000,
    coarseDays: 7 * weeks + Math.floor(3 * random()),
    lengthMm: [length, length * (1 - loss)],
    areaMm2: [0.6 * length ** 2, 0.6 * (length * (1 - loss)) ** 2],
    lastStep: isInCoarse ? 'coarse' : 'polish',
    steps: isInCoarse ? ['coarse'] : random() < 0.3 ? STEPS.filter((step) => step !== 'prepolish') : STEPS,
    action: isInCoarse ? (fate < 0.04 ? 'set-aside' : 'repeat') : fate < 0.9 ? 'finished' : 'repeat',
    gloss: isInCoarse ? null : inventedGloss(Math.max(0.05, share)),
  });
}

/** Mulberry32: a small generator with a seed, so that every run draws the same. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
