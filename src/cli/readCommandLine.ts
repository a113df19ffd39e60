import { parseArgs } from 'node:util';
import type { PixelPoint } from '../analysis/report';
import { materialNamed } from '../grading/materialNamed';
import { MATERIAL_NAMES, type MaterialName } from '../grading/materials';
import { STEPS, type Step } from '../grading/steps';
import { Misuse } from './misuse';

/** What the command was asked to do. */
export interface Command {
  readonly photos: readonly string[];
  /** True when all photos are shots of one scene, to be merged. */
  readonly exposures: boolean;
  /** A photo of the same tray with the lamp elsewhere; null for none. */
  readonly lampMovedFile: string | null;
  readonly ballMm: number | null;
  readonly ballAt: PixelPoint | null;
  readonly rigFile: string | null;
  readonly saveRigFile: string | null;
  readonly step: Step;
  readonly material: MaterialName | null;
  /** `-` for the standard output. */
  readonly jsonFile: string | null;
  readonly pictureFolder: string | null;
  readonly bundleFile: string | null;
  /** Name of the batch in the bundle; null for one by the day. */
  readonly batchName: string | null;
  /** Photos to be graded at a time, in processes of their own; null to grade them here, one after the other. */
  readonly jobs: number | null;
}

const OPTIONS = {
  exposures: { type: 'boolean' },
  'lamp-moved': { type: 'string' },
  'ball-mm': { type: 'string' },
  'no-ball': { type: 'boolean' },
  'ball-at': { type: 'string' },
  rig: { type: 'string' },
  'save-rig': { type: 'string' },
  step: { type: 'string' },
  material: { type: 'string' },
  json: { type: 'string' },
  picture: { type: 'string' },
  bundle: { type: 'string' },
  'batch-name': { type: 'string' },
  jobs: { type: 'string' },
  help: { type: 'boolean' },
} as const;

/** Longest name that a bundle takes. */
const MOST_LETTERS = 200;

const MOST_JOBS = 64;

/** Diameter of the ball when nothing is said, mm. */
const USUAL_BALL_MM = 16;

/**
 * Reads the words after the command's name.
 *
 * @returns null when help is asked for.
 * @throws Misuse in one sentence if they cannot be followed.
 */
export function readCommandLine(words: readonly string[]): Command | null {
  const { values, positionals: photos } = parse(words);
  if (values.help) return null;
  if (photos.length === 0) throw new Misuse('Name at least one photo; --help lists the options.');
  if (values['no-ball'] && (values['ball-mm'] ?? values['ball-at']) !== undefined) {
    throw new Misuse('Give either --no-ball or --ball-mm and --ball-at, not both.');
  }
  if (values.exposures && photos.length < 2) {
    throw new Misuse('--exposures merges shots of one scene: name at least two.');
  }
  checkLampMoved(values, photos);
  if (values['ball-at'] !== undefined && photos.length > 1 && !values.exposures) {
    throw new Misuse('--ball-at points at the ball of one photo: name only that one.');
  }
  return {
    photos,
    exposures: values.exposures === true,
    lampMovedFile: values['lamp-moved'] ?? null,
    ballMm: values['no-ball'] ? null : ballMmOf(values['ball-mm']),
    ballAt: ballAtOf(values['ball-at']),
    rigFile: values.rig ?? null,
    saveRigFile: values['save-rig'] ?? null,
    step: stepOf(values.step),
    material: materialOf(values.material),
    jsonFile: values.json ?? null,
    pictureFolder: values.picture ?? null,
    bundleFile: values.bundle ?? null,
    batchName: batchNameOf(values),
    jobs: jobsOf(values),
  };
}

function checkLampMoved(values: ReturnType<typeof parse>['values'], photos: readonly string[]): void {
  if (values['lamp-moved'] === undefined) return;
  if (photos.length > 1 && !values.exposures) {
    throw new Misuse('--lamp-moved goes with one photo: name only that one.');
  }
  if (values['no-ball']) {
    throw new Misuse('--lamp-moved needs the ball in both photos: leave out --no-ball.');
  }
}

function batchNameOf({ bundle, 'batch-name': name }: ReturnType<typeof parse>['values']): string | null {
  if (name === undefined) return null;
  if (bundle === undefined)
    throw new Misuse('--batch-name names the batch of a bundle: give --bundle FILE too.');
  if (name.trim() === '' || name.length > MOST_LETTERS) {
    throw new Misuse(`--batch-name needs a name of 1 to ${MOST_LETTERS} letters.`);
  }
  return name;
}

/** What looks at all photos together, or at one scene alone, cannot be shared out. */
const ALONE = ['exposures', 'lamp-moved', 'ball-at', 'save-rig', 'bundle'] as const;

function jobsOf(values: ReturnType<typeof parse>['values']): number | null {
  if (values.jobs === undefined) return null;
  const jobs = Number(values.jobs);
  if (!Number.isInteger(jobs) || jobs < 1 || jobs > MOST_JOBS)
    throw new Misuse(`--jobs needs a number from 1 to ${MOST_JOBS}, not "${values.jobs}".`);
  const alone = ALONE.find((name) => values[name] !== undefined);
  if (alone !== undefined) throw new Misuse(`--${alone} does not go with --jobs: leave one of them out.`);
  if (values.json === '-') throw new Misuse('--jobs notes what is done beside the JSON: give --json a file.');
  return jobs;
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({ args: [...words], options: OPTIONS, allowPositionals: true });
  } catch (error) {
    const [sentence] = (error as Error).message.split('. ');
    throw new Misuse(`${sentence?.replace(/\.?$/, '')}; --help lists the options.`);
  }
}

function ballMmOf(text: string | undefined): number {
  const ballMm = text === undefined ? USUAL_BALL_MM : Number(text);
  if (!(ballMm > 0 && Number.isFinite(ballMm))) {
    throw new Misuse(`--ball-mm needs a diameter in millimeters, such as 16, not "${text}".`);
  }
  return ballMm;
}

function ballAtOf(text: string | undefined): PixelPoint | null {
  if (text === undefined) return null;
  const match = /^(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)$/.exec(text);
  if (!match)
    throw new Misuse(`--ball-at needs a row and a column in pixels, such as 840,1210, not "${text}".`);
  return [Number(match[1]), Number(match[2])];
}

function stepOf(text = 'coarse'): Step {
  const step = STEPS.find((known) => known === text);
  if (!step) throw new Misuse(`There is no step "${text}": choose ${STEPS.join(', ')}.`);
  return step;
}

function materialOf(text: string | undefined): MaterialName | null {
  if (text === undefined) return null;
  const material = materialNamed(text);
  if (!material) throw new Misuse(`There is no material "${text}": choose ${MATERIAL_NAMES.join(', ')}.`);
  return material;
}
