/**
 * Scores the forecast on simulated histories: `npm run bench:forecast [-- --noise SD] [--histories N]`. They follow the
 * grinding law stated in src/grading/forecast.ts with draws of their own; noise is that of fractures in the flaws bench,
 * since pits of one photo are counted too badly for a forecast (`--noise 0.77`). The exit status says whether every
 * target is met.
 */
import { parseArgs } from 'node:util';
import { forecast, LEVEL_NOISE, WILL_NOT_CLEAR } from '../../src/grading/forecast';
import { quantile } from './quantile';

const { values } = parseArgs({ options: { noise: { type: 'string' }, histories: { type: 'string' } } });
const NOISE = Number(values.noise ?? LEVEL_NOISE.fracture);
const HISTORIES = Number(values.histories ?? 2000);
const CHECKS = 14;

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

const random = uniform(5);
const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

interface History {
  readonly floor: number;
  readonly truth: readonly number[];
  readonly seen: readonly number[];
  /** Checks until the true level is within the limit; null for never. */
  readonly clearsAt: number | null;
}

function history(): History {
  const stays = random() < 0.25;
  const floor = stays ? 1.2 + 3 * random() : 0.8 * random();
  const start = Math.max(floor * 1.05, 5 * Math.exp(0.6 * normal()));
  const tau = 3 * Math.exp(0.5 * normal());
  const truth = Array.from({ length: CHECKS }, (_, t) => floor + (start - floor) * Math.exp(-t / tau));
  const seen = truth.map((level) => Math.max(0, Math.sqrt(level) + NOISE * normal()) ** 2);
  const clearsAt = start <= 1 ? 0 : stays ? null : tau * Math.log((start - floor) / (1 - floor));
  return { floor, truth, seen, clearsAt };
}

const errors: number[] = [];
const tally = { within: 0, asked: 0, said: 0, saidRightly: 0, flat: 0, flatSaid: 0 };
for (let k = 0; k < HISTORIES; k++) {
  const one = history();
  for (let now = 3; now < CHECKS; now++) {
    const found = forecast(one.seen.slice(0, now + 1), NOISE);
    if (!found) continue;
    const isOver = one.truth[now]! > 1;
    if (isOver && one.clearsAt !== null && found.checks !== null) {
      errors.push(Math.abs(found.checks - (one.clearsAt - now)));
    }
    if (isOver && one.clearsAt !== null && found.interval !== null) {
      tally.asked++;
      const left = one.clearsAt - now;
      if (left >= found.interval[0] && left <= found.interval[1]) tally.within++;
    }
    if (found.neverOdds >= WILL_NOT_CLEAR) {
      tally.said++;
      if (one.clearsAt === null) tally.saidRightly++;
    }
  }
  if (one.clearsAt === null) {
    // The third check at which the true level had come within a tenth of its floor.
    const flat = one.truth.findIndex((level) => level < 1.1 * one.floor);
    const third = flat < 0 ? -1 : flat + 2;
    if (third >= 0 && third < CHECKS) {
      tally.flat++;
      const found = forecast(one.seen.slice(0, third + 1), NOISE);
      if (found && found.neverOdds >= WILL_NOT_CLEAR) tally.flatSaid++;
    }
  }
}

const rows = [
  row('median error, checks', quantile(errors, 0.5), (value) => value <= 1, '≤ 1'),
  row(
    '80 % intervals that hold',
    tally.within / tally.asked,
    (value) => value >= 0.75 && value <= 0.88,
    '0.75 to 0.88',
  ),
  row('"will not clear" right', tally.saidRightly / tally.said, (value) => value >= 0.95, '≥ 0.95'),
  row(
    '"will not clear" said by the third flat check',
    tally.flatSaid / tally.flat,
    (value) => value >= 0.85,
    '≥ 0.85',
  ),
];
function row(what: string, value: number, isMet: (value: number) => boolean, target: string) {
  return { met: isMet(value), text: `${what}: ${value.toFixed(3)} (target ${target})` };
}
console.log(
  `${HISTORIES} histories, noise of the level's root ${NOISE}; ${errors.length} forecasts of stones that clear, ${tally.flat} that do not`,
);
for (const { met, text } of rows) console.log(`${met ? 'met    ' : 'NOT MET'} ${text}`);
process.exitCode = rows.every(({ met }) => met) ? 0 : 1;
