import type { Finish } from '../../grading/finish';
import type { MaterialName } from '../../grading/materials';
import type { Step } from '../../grading/steps';
import { flawReasons } from './flawReasons';
import { materials } from './materialNames';
import { stepsWithin } from './stepNames';

/** Within a sentence. */
export const finishes = {
  matte: 'matte',
  satin: 'satin',
  'semi-gloss': 'semi-gloss',
  gloss: 'gloss',
  mirror: 'mirror',
} as const;

const atMost = (gu: string | null) => (gu === null ? '' : `: at most about ${gu} gloss units at 60°`);

/** Why a stone has its verdict. Numbers come written, lengths and shares with their unit. */
export const reasons = {
  ...flawReasons,
  /** A reading with its interval, to be set into the sentences below. */
  reading: (gu: string, low: string, high: string) => `${gu} gloss units at 60° (${low} to ${high})`,
  dullAsGround: (reading: string, step: Step) =>
    `Reads about ${reading}, dull as ${stepsWithin[step]} grit leaves it.`,
  /** Said of what is smooth enough and of what is not. */
  expected: (reading: string, least: string, step: Step) =>
    `Reads about ${reading}; ${least} or more is expected after ${stepsWithin[step]}.`,
  maybeSmooth: (reading: string, least: string, step: Step) =>
    `Reads about ${reading}, not sure enough: ${least} or more is expected after ${stepsWithin[step]}. Photograph it again with a rounded side to the lamp.`,
  couldBeEnough: 'It could just be enough, so compare it with the others.',
  /** Material null for an unknown stone, taken for quartz. */
  polished: (
    reading: string,
    finish: Finish,
    share: string,
    material: MaterialName | null,
    ceiling: string,
  ) =>
    `Reads about ${reading}, ${finishes[finish]}: ${share} of its ceiling, a perfect polish of ${materials[material ?? 'quartz']} reads ${ceiling}.`,
  couldBeLess: (low: string, wanted: string) =>
    `It could be as little as ${low}, and finished means ${wanted}: compare it with a stone you know.`,
  finishedMeans: (wanted: string, gu: string) => `Finished means ${wanted}, ${gu} gloss units.`,
  couldBeMore: (high: string) => `It could be as much as ${high}.`,
  oftenStops: (material: MaterialName, finish: Finish) =>
    `Many pieces of ${materials[material]} stop at ${finishes[finish]}: if one more polish brings nothing, call it finished.`,
  /** Most gloss it can have; null when nothing is known. */
  dullExpected: (most: string | null, step: Step) =>
    `No highlight stands out${atMost(most)}, as expected after ${stepsWithin[step]} grit.`,
  tooDull: (most: string | null, expected: string, step: Step) =>
    `No highlight stands out${atMost(most)}; ${expected} or more is expected after the ${stepsWithin[step]} step.`,
  highlightMissing: (most: string | null, step: Step) =>
    `No highlight found${atMost(most)}, and one is expected after the ${stepsWithin[step]} step. Turn a rounded side to the lamp and photograph it again.`,
  wet: (reading: string, most: string, step: Step, isSure: boolean) =>
    `It reads ${reading}, and ${stepsWithin[step]} grit leaves ${most} at most: it ${isSure ? 'looks' : 'may be'} wet. Dry it and photograph it again; if it is dry, check the step.`,
  secondLight:
    'Its gloss was not read, because its highlight lies where it mirrors a second light: switch that light off and take the photo again.',
  rigMoved:
    'Its gloss was not read, because lamp or camera are not where they were: lay the ball in the tray and take the photo again.',
  /** Why something is not taken for a stone that can be judged. */
  unlike: {
    shadow:
      'Its shadow is not one that a stone throws in the lamp’s light, as where something is flat, a picture, or wrongly outlined: look at it yourself.',
    round:
      'Its outline is more even than tumbling makes a stone, as of a marble, a coin, a fruit or a bean: look at it yourself.',
    ragged:
      'It is longer or more ragged than a tumbled stone, so it may be none or its outline is wrong: look at it yourself.',
    photo: 'A warning about this photo stands against everything on it: mend that, and take the photo again.',
  },
  cutOff: 'The edge of the photo cuts this stone off: move it into the picture.',
  fewPixels: (along: string) => `It is only ${along} pixels long, too few to see pits: go closer.`,
  littleInspected: (share: string) =>
    `Only ${share} of what the photo shows of it could be inspected: turn it and take another.`,
  tooSmall: (length: string, least: string) =>
    `It is down to ${length}, and below ${least} grinding on costs more stone than it mends. Keep it as it is or set it aside.`,
} as const;
