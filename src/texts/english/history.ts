import type { Finish } from '../../grading/finish';
import type { MaterialName } from '../../grading/materials';
import type { Step } from '../../grading/steps';
import { materials } from './materialNames';
import { finishes } from './reasons';
import { stepsWithin } from './stepNames';

const are = (count: number) => (count === 1 ? 'is' : 'are');

/** What a stone’s past says: outlooks, progress, habits. Numbers come written, lengths with their unit. */
export const history = {
  /** A span of time, to be set into the sentences below; its range, or null where there is none. */
  about: (count: number, unit: 'day' | 'week', range: readonly [from: number, to: number] | null) =>
    `about ${count} ${unit}${count === 1 ? '' : 's'}${range === null ? '' : ` (${range[0]} to ${range[1]})`}`,
  ready: 'Its pits and fractures are within your limits.',
  other: 'Its pits and fractures are within your limits; what keeps it back cannot be forecast.',
  early: 'One look at a side tells nothing about the next ones yet: two or more do.',
  stays: (kind: 'pit' | 'fracture', checks: number, floor: string, limit: string) =>
    `This floor will hardly clear: after ${checks} checks its ${kind === 'pit' ? 'pits' : 'fractures'} come down to about ${floor}, and ${limit} may stay. Saw it, break the piece off, or accept it as it is.`,
  tooSmallFirst: (wait: string, length: string, least: string) =>
    `It would take ${wait} more, and by then it is down to about ${length}: below your smallest size of ${least}. Set it aside or accept it as it is.`,
  clears: (wait: string) => `${wait.charAt(0).toUpperCase()}${wait.slice(1)} more in coarse.`,
  /** Parts of the outlook of a batch; each is left out where it counts none, but for the first. */
  batchReady: (ready: number, all: number) => `${ready} of ${all} ${are(ready)} ready`,
  batchClears: (count: number, halfIn: string) =>
    count === 1 ? `1 more will clear, in ${halfIn}` : `${count} more will clear, half of them in ${halfIn}`,
  batchStays: (count: number) => `${count} will hardly clear`,
  batchOthers: (count: number) => `${count} ${are(count)} kept back by something else`,
  batchEarly: (count: number) => `${count} ${count === 1 ? 'needs' : 'need'} a second look at the same side`,
  glossStuck: (then: string, before: Step, now: string, step: Step) =>
    `Stuck: it read ${then} gloss units after ${stepsWithin[before]} and ${now} now, and ${stepsWithin[step]} should leave it smoother. Another round of the same is unlikely to help: go back one grit, or take it as its end.`,
  glossLate: (now: string, step: Step) =>
    `Late: ${now} gloss units is rougher than ${stepsWithin[step]} should leave it.`,
  glossOnTime: (now: string, step: Step) =>
    `On time: ${now} gloss units is what ${stepsWithin[step]} should leave, or better.`,
  /** `per` is the unit of surface: "per cm²". */
  learnedPits: (step: Step, usual: string, per: string, limit: string) =>
    `You usually let stones go on from ${stepsWithin[step]} with up to ${usual} pits ${per}; your limit is ${limit}. Make it your limit?`,
  learnedFractures: (step: Step, usual: string, limit: string) =>
    `You usually let stones go on from ${stepsWithin[step]} with up to ${usual} of fractures; your limit is ${limit}. Make it your limit?`,
  /** The day of the check before, such as 2026-10-03. */
  opened: (kind: 'pit' | 'fracture', day: string, step: Step) =>
    `${kind === 'pit' ? 'More pits' : 'More fracture'} than at the check of ${day}, and ${stepsWithin[step]} makes none: a fracture opened. Back to coarse, and look at it under a loupe; grit sits in such a crack.`,
  usualEnd: (material: MaterialName | null, finished: number, quartile: string, reads: string) =>
    `It sits where ${material === null ? 'such a stone' : materials[material]} usually ends here: ${finished} finished ones read ${quartile} gloss units or more, three of four, and this one ${reads}.`,
  polishBroughtNothing: (material: MaterialName, finish: Finish) =>
    `One more polish brought nothing, and many pieces of ${materials[material]} stop at ${finishes[finish]}: call it finished.`,
  underPolished: (finished: number, quartile: string) =>
    `Under-polished rather than at its end: ${finished} finished ones of its kind read ${quartile} gloss units or more, three of four.`,
  pitsStand:
    'Its pits have not become fewer in three checks. Photos count pits badly, so feel it with the thumb-nail; if they are all still there, more of the same is pointless.',
} as const;
