import type { LevelNoise } from '../../src/grading/levelNoise';

/** One stone's true flaw level over its checks, in limits, following the grinding law of src/grading/forecast.ts. */
export interface GrindLaw {
  readonly floor: number;
  readonly truth: readonly number[];
  /** Checks after the first until the true level is within the limit; null for never. */
  readonly clearsAt: number | null;
}

/** A law with what the photographs say of it. */
export interface GrindHistory extends GrindLaw {
  readonly seen: readonly number[];
}

interface Spread {
  readonly middle: number;
  readonly lnSpread: number;
}

/** How histories are drawn. */
export interface World {
  /** Share of stones whose floor is above the limit. */
  readonly staying: number;
  readonly tau: Spread;
  readonly start: Spread;
  /** No floor lies nearer to the limit, limits. */
  readonly gap: number;
  /** Power of t / τ in the law; 1 is the law itself, below 1 grinding slows down. */
  readonly power: number;
}

const USUAL: World = {
  staying: 0.25,
  tau: { middle: 3, lnSpread: 0.5 },
  start: { middle: 5, lnSpread: 0.6 },
  gap: 0.2,
  power: 1,
};

/** The usual world is the forecast's own assumption; the others are not, to see what is lost when it is wrong. */
export const WORLDS: Readonly<Record<string, World>> = {
  usual: USUAL,
  other: {
    ...USUAL,
    staying: 0.4,
    tau: { middle: 4.5, lnSpread: 0.7 },
    start: { middle: 3.5, lnSpread: 0.8 },
  },
  close: { ...USUAL, gap: 0 },
  slowing: { ...USUAL, power: 0.8 },
};

export const CHECKS = 14;

interface Random {
  readonly uniform: () => number;
  readonly normal: () => number;
}

/** Mulberry32: a small generator with a seed, so that every run draws the same. */
function randomFrom(seed: number): Random {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}

/** Draws laws over 14 checks; floors lie evenly below the limit, or from there to 4.2 limits, starts no lower than 1.05 floors. */
export function drawLaws(count: number, seed: number, world: World): GrindLaw[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => drawLaw(random, world));
}

/** Draws laws and readings of them. */
export function drawHistories(count: number, seed: number, noise: LevelNoise, world: World): GrindHistory[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const law = drawLaw(random, world);
    const kept = noise.kept * random.normal();
    const read = (level: number) =>
      Math.max(0, Math.sqrt(level) + kept + noise.fresh * studentsT2(random.uniform())) ** 2;
    return { ...law, seen: law.truth.map(read) };
  });
}

/** Quantile function of Student's t with two degrees of freedom, in closed form. */
const studentsT2 = (p: number) => (2 * p - 1) / Math.sqrt(Math.max(1e-12, 2 * p * (1 - p)));

function drawLaw({ uniform, normal }: Random, world: World): GrindLaw {
  const drawn = ({ middle, lnSpread }: Spread) => middle * Math.exp(lnSpread * normal());
  const stays = uniform() < world.staying;
  const floor = stays ? 1 + world.gap + (3.2 - world.gap) * uniform() : (1 - world.gap) * uniform();
  const start = Math.max(floor * 1.05, drawn(world.start));
  const tau = drawn(world.tau);
  const truth = Array.from(
    { length: CHECKS },
    (_, t) => floor + (start - floor) * Math.exp(-((t / tau) ** world.power)),
  );
  const wait = () => tau * Math.log((start - floor) / (1 - floor)) ** (1 / world.power);
  return { floor, truth, clearsAt: start <= 1 ? 0 : stays ? null : wait() };
}
