/**
 * Scores the forecast on simulated histories: `npm run bench:forecast [-- --histories N] [--seed N] [--kept SD]
 * [--fresh SD] [--world NAME] [--odds] [--ideal SURE]`. The threshold is chosen on seed 1, with `--odds` to see what
 * each would give; without `--seed` another seed is reported. `--ideal` scores, instead of ours, the best forecast there
 * can be, which says that a stone will not clear from those odds on. The exit status says whether every target is met.
 */
import { parseArgs } from 'node:util';
import { forecast, LEVEL_NOISE, WILL_NOT_CLEAR } from '../../src/grading/forecast';
import { drawHistories, WORLDS } from './grindHistories';
import { type Guess, idealForecast } from './idealForecast';
import { quantile } from './quantile';

const { values } = parseArgs({
  options: {
    histories: { type: 'string', default: '2000' },
    seed: { type: 'string', default: '2' },
    kept: { type: 'string', default: String(LEVEL_NOISE.fracture.kept) },
    fresh: { type: 'string', default: String(LEVEL_NOISE.fracture.fresh) },
    world: { type: 'string', default: 'usual' },
    odds: { type: 'boolean', default: false },
    ideal: { type: 'string' },
  },
});
const noise = { kept: Number(values.kept), fresh: Number(values.fresh) };
const world = WORLDS[values.world];
if (!world) {
  console.error(`No such world: ${values.world}; there are ${Object.keys(WORLDS).join(', ')}`);
  process.exit(2);
}
const sure = values.ideal === undefined ? WILL_NOT_CLEAR : Number(values.ideal);
const guess = values.ideal === undefined ? ours : idealForecast(noise, world);

function ours(levels: readonly number[]): Guess {
  const { checks, interval, neverOdds } = forecast(levels, noise)!;
  return { neverOdds, left: [interval?.[0] ?? 0, checks ?? 0, interval?.[1] ?? 0] };
}

/** One forecast of one history, with what is true. */
interface Said extends Guess {
  readonly history: number;
  readonly floor: number;
  readonly now: number;
  /** Checks truly left; null for never. */
  readonly trulyLeft: number | null;
  readonly isOver: boolean;
  readonly isThirdFlat: boolean;
}

const histories = drawHistories(Number(values.histories), Number(values.seed), noise, world);
const started = process.cpuUsage();
const said = histories.flatMap(({ floor, truth, seen, clearsAt }, history) => {
  // The third check at which the true level had come within a tenth of its floor.
  const flat = clearsAt === null ? truth.findIndex((level) => level < 1.1 * floor) : -1;
  return seen.map(
    (_, now): Said => ({
      ...guess(seen.slice(0, now + 1)),
      history,
      floor,
      now,
      trulyLeft: clearsAt === null ? null : clearsAt - now,
      isOver: truth[now]! > 1,
      isThirdFlat: flat >= 0 && now === flat + 2,
    }),
  );
});
const ms = process.cpuUsage(started).user / 1000 / said.length;

/** From the fourth check on, of stones that are still over the limit and will clear. */
const answered = said.filter(
  ({ now, trulyLeft, isOver, neverOdds }) => now >= 3 && isOver && trulyLeft !== null && neverOdds < sure,
);
const flats = said.filter(({ isThirdFlat }) => isThirdFlat);
const hopeless = said.filter(isSaid(sure));
const atFirst = hopeless.filter((one, i) => hopeless[i - 1]?.history !== one.history);

function isSaid(from: number) {
  return ({ neverOdds }: Said) => neverOdds >= from;
}
const isRight = ({ trulyLeft }: Said) => trulyLeft === null;
const holds = ({ left: [low, , high], trulyLeft }: Said) => trulyLeft! >= low && trulyLeft! <= high;
const share = (some: readonly Said[], isSo: (one: Said) => boolean) => some.filter(isSo).length / some.length;

function row(what: string, value: number, isMet: (value: number) => boolean, target: string) {
  return { met: isMet(value), text: `${what}: ${value.toFixed(3)} (target ${target})` };
}
const errors = answered.map(({ left, trulyLeft }) => Math.abs(left[1] - trulyLeft!));
const rows = [
  row('median error, checks', quantile(errors, 0.5), (value) => value <= 1, '≤ 1'),
  row('80 % intervals that hold', share(answered, holds), (v) => v >= 0.75 && v <= 0.88, '0.75 to 0.88'),
  row('"will not clear" right', share(hopeless, isRight), (value) => value >= 0.95, '≥ 0.95'),
  row(
    '"will not clear" said by the third flat check',
    share(flats, isSaid(sure)),
    (value) => value >= 0.85,
    '≥ 0.85',
  ),
];
console.log(
  `${values.ideal === undefined ? 'our forecast' : 'best there can be'}, seed ${values.seed}, world ${values.world}: ${histories.length} histories, noise of a level's root ${noise.kept} kept, ${noise.fresh} new at each check; ${answered.length} forecasts of stones that clear, ${flats.length} stones that do not; ${ms.toFixed(2)} ms a forecast`,
);
for (const { met, text } of rows) console.log(`${met ? 'met    ' : 'NOT MET'} ${text}`);
console.log(`right at the first saying: ${share(atFirst, isRight).toFixed(3)} of ${atFirst.length}`);
for (const [low, high] of [
  [1, 1.5],
  [1.5, 2.5],
  [2.5, 9],
  [1.5, 9],
] as const) {
  const own = flats.filter(({ floor }) => floor >= low && floor < high);
  const late = own.filter(({ now }) => now >= 4);
  console.log(
    `floor ${low} to ${high} limits: said of ${share(own, isSaid(sure)).toFixed(2)} (${own.length}); with five checks and more ${share(late, isSaid(sure)).toFixed(2)} (${late.length})`,
  );
}
if (values.odds) {
  for (let from = 0.4; from < 0.91; from += 0.025) {
    console.log(
      `from odds of ${from.toFixed(3)}: right ${share(said.filter(isSaid(from)), isRight).toFixed(3)}, said ${share(flats, isSaid(from)).toFixed(3)}`,
    );
  }
}
process.exitCode = rows.every(({ met }) => met) ? 0 : 1;
