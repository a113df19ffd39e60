import type { Finish } from './finish';

/** Kinds of danger in grinding a material. */
export type Hazard = 'copper' | 'asbestos' | 'asbestos-fibers';

/** What is known of a material before it is photographed. */
export interface Material {
  /** Lowest and highest refractive index of the mineral. */
  readonly n: readonly [low: number, high: number];
  readonly mohs: readonly [low: number, high: number];
  /** Why this stone needs care; `verdicts.hazards` says what to do. Common practice. */
  readonly hazard?: Hazard;
  /** Where many pieces stop whatever is done. Common practice. */
  readonly practicalFinish?: Finish;
  readonly source: string;
}

const HANDBOOK = 'gemmological handbook tables';
const FROM_MEMORY = 'gemmological handbook tables, from memory';

const chalcedony = { n: [1.53, 1.54], mohs: [6.5, 7], source: HANDBOOK } as const;
const quartz = { n: [1.544, 1.553], mohs: [7, 7], source: HANDBOOK } as const;
const beryl = { n: [1.577, 1.583], mohs: [7.5, 8], source: HANDBOOK } as const;

/** Stones by mineral and trade name. Rocks carry the range of their main minerals. */
export const MATERIALS = {
  agate: chalcedony,
  amazonite: { n: [1.522, 1.53], mohs: [6, 6.5], source: FROM_MEMORY },
  amethyst: quartz,
  aquamarine: beryl,
  aventurine: { n: [1.544, 1.553], mohs: [6.5, 7], source: FROM_MEMORY },
  basalt: { n: [1.55, 1.7], mohs: [5, 6.5], practicalFinish: 'satin', source: FROM_MEMORY },
  beryl,
  bloodstone: chalcedony,
  calcite: { n: [1.486, 1.658], mohs: [3, 3], source: HANDBOOK },
  carnelian: chalcedony,
  chalcedony,
  chert: { ...chalcedony, practicalFinish: 'satin' },
  chrysocolla: { n: [1.46, 1.57], mohs: [2, 4], hazard: 'copper', source: FROM_MEMORY },
  citrine: quartz,
  corundum: { n: [1.762, 1.77], mohs: [9, 9], source: HANDBOOK },
  fluorite: { n: [1.434, 1.434], mohs: [4, 4], source: HANDBOOK },
  garnet: { n: [1.71, 1.82], mohs: [6.5, 7.5], source: FROM_MEMORY },
  granite: { n: [1.52, 1.56], mohs: [6, 7], source: FROM_MEMORY },
  howlite: { n: [1.586, 1.605], mohs: [3.5, 3.5], practicalFinish: 'satin', source: FROM_MEMORY },
  jadeite: { n: [1.666, 1.68], mohs: [6.5, 7], source: FROM_MEMORY },
  jasper: { ...chalcedony, practicalFinish: 'satin' },
  labradorite: { n: [1.559, 1.568], mohs: [6, 6.5], source: FROM_MEMORY },
  'lapis lazuli': { n: [1.5, 1.55], mohs: [5, 6], source: FROM_MEMORY },
  malachite: { n: [1.655, 1.909], mohs: [3.5, 4], hazard: 'copper', source: FROM_MEMORY },
  moonstone: { n: [1.518, 1.526], mohs: [6, 6.5], source: FROM_MEMORY },
  nephrite: { n: [1.606, 1.632], mohs: [6, 6.5], source: FROM_MEMORY },
  obsidian: { n: [1.48, 1.51], mohs: [5, 5.5], source: HANDBOOK },
  opal: { n: [1.37, 1.47], mohs: [5.5, 6.5], source: FROM_MEMORY },
  peridot: { n: [1.654, 1.69], mohs: [6.5, 7], source: FROM_MEMORY },
  'petrified wood': { ...chalcedony, source: 'as chalcedony, which replaces the wood; from memory' },
  quartz,
  rhodochrosite: { n: [1.597, 1.817], mohs: [3.5, 4], source: FROM_MEMORY },
  rhodonite: { n: [1.733, 1.747], mohs: [5.5, 6.5], source: FROM_MEMORY },
  'rose quartz': quartz,
  serpentine: {
    n: [1.56, 1.571],
    mohs: [2.5, 5.5],
    hazard: 'asbestos',
    practicalFinish: 'satin',
    source: FROM_MEMORY,
  },
  'smoky quartz': quartz,
  sodalite: { n: [1.483, 1.487], mohs: [5.5, 6], source: FROM_MEMORY },
  "tiger's eye": {
    n: [1.544, 1.553],
    mohs: [6.5, 7],
    hazard: 'asbestos-fibers',
    source: FROM_MEMORY,
  },
  topaz: { n: [1.61, 1.64], mohs: [8, 8], source: HANDBOOK },
  tourmaline: { n: [1.624, 1.644], mohs: [7, 7.5], source: FROM_MEMORY },
  turquoise: { n: [1.61, 1.65], mohs: [5, 6], hazard: 'copper', source: FROM_MEMORY },
  unakite: { n: [1.52, 1.76], mohs: [6, 7], source: FROM_MEMORY },
} as const satisfies Readonly<Record<string, Material>>;

export type MaterialName = keyof typeof MATERIALS;

/** Names in alphabetical order, for a list to pick from. */
export const MATERIAL_NAMES = Object.keys(MATERIALS) as readonly MaterialName[];

/** A stone of which nothing was said: quartz's index, with the range of nearly all stones that are tumbled. */
export const UNKNOWN_INDEX = { n: 1.54, low: 1.45, high: 1.7 } as const;
