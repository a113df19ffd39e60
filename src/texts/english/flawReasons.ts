import type { Step } from '../../grading/steps';
import { grits, stepsWithin, wayBack } from './stepNames';

export const flaws = { pit: 'pit', fracture: 'fracture', chip: 'chip', scratch: 'scratch' } as const;
export const flawPlurals = {
  pit: 'pits',
  fracture: 'fractures',
  chip: 'chips',
  scratch: 'scratches',
} as const;

type Kind = keyof typeof flaws;

/** When a limit holds. */
function occasion(step: Step): string {
  if (step === 'coarse') return 'for leaving coarse';
  return step === 'polish' ? 'for a finished stone' : `at the ${stepsWithin[step]} step`;
}

/** "no pits", "1 fracture", "0.2 pits"; null for none at all. */
function count(number: string | null, kind: Kind): string {
  if (number === null) return `no ${flawPlurals[kind]}`;
  return `${number} ${number === '1' ? flaws[kind] : flawPlurals[kind]}`;
}

const found = (fractures: number, length: string) =>
  fractures === 1 ? `One fracture of ${length}` : `${fractures} fractures, ${length} in all`;

/** What the flaws of a stone or of a tray say about it. Lengths and surfaces come with their unit. */
export const flawReasons = {
  flawCount: count,
  fracturesTooLong: (fractures: number, length: string) =>
    `${found(fractures, length)}: fractures like this often only open further. Saw it, break it there, or keep it as it is.`,
  fracturesOver: (fractures: number, length: string, limit: string, step: Step) =>
    `${found(fractures, length)}, the limit ${occasion(step)} is ${limit}.`,
  /** `per` is the unit of surface: "per cm²". */
  pitsOver: (density: string, per: string, limit: string, step: Step) =>
    `${count(density, 'pit')} ${per}, the limit ${occasion(step)} is ${limit}.`,
  pitsHoldGrit: 'Pits hold grit that would scratch the batch.',
  widestPit: (size: string, limit: string, step: Step) =>
    `The widest pit is ${size} across, the limit ${occasion(step)} is ${limit}.`,
  widestChip: (size: string, limit: string, step: Step) =>
    `A chip of ${size}, the limit ${occasion(step)} is ${limit}.`,
  /** Width and step whose grit leaves such scratches; null where no width was measured. */
  scratchesOver: (
    scratches: number,
    cause: { readonly width: string; readonly origin: Step } | null,
    back: Step | null,
  ) => {
    const many = scratches === 1 ? 'One fresh scratch' : `${scratches} fresh scratches`;
    const why =
      cause === null
        ? 'coarser grit may have got in'
        : `about ${cause.width} wide, as loose ${grits[cause.origin]} leaves them`;
    return `${many}: ${why}. Wash out stones and barrel, and ${wayBack(back)}.`;
  },
  tooFaint: (doubtful: readonly (readonly [number: string, kind: Kind])[]) =>
    `The photo may also show ${doubtful.map(([number, kind]) => count(number, kind)).join(' and ')}, too faint to be sure of; real ones would be over the limit. Check with a loupe.`,
  /** Null for none. */
  sound: (pits: { readonly density: string; readonly per: string } | null, fractures: string | null) =>
    `Sound: ${pits === null ? 'no pits' : `${count(pits.density, 'pit')} ${pits.per}`} and ${fractures === null ? 'no fractures' : `${fractures} of fractures`} on the side in view.`,
  noneSeen: (kind: Kind) => `${count(null, kind)} seen`,
  /** What was found for the smoothness: how many, their sizes added up, the surface. */
  seenOn: (number: string, kind: Kind, total: string, surface: string) => {
    const measure = kind === 'pit' || kind === 'chip' ? 'across' : 'long';
    return `${count(number, kind)}, ${total} ${measure}${number === '1' ? '' : ' together'}, on ${surface}`;
  },
  fewScratched: (stones: readonly number[], all: number) => {
    const one = stones.length === 1;
    const named = one
      ? `stone ${stones[0]}`
      : `stones ${stones.slice(0, -1).join(', ')} and ${stones.at(-1)}`;
    return `Only ${named} of ${all} ${one ? 'shows' : 'show'} fresh scratches. Pale and busy stones hide theirs: look at some with a loupe. If they are scratched too, grit has got into the batch; if not, a sharp edge or a harder neighbor did it to ${one ? 'this one' : 'these'}.`;
  },
  batchScratched: (stones: readonly number[], all: number, origin: Step | null, back: Step | null) => {
    const grit = origin === null ? 'coarser grit' : `${grits[origin]} or the like`;
    return `${stones.length} of ${all} stones are freshly scratched (${stones.join(', ')}): ${grit} has likely got into this batch. Wash out barrel, lid and every stone, also those without a scratch in view, throw away the slurry and the charge, and ${wayBack(back)}.`;
  },
} as const;
