import { flawPlurals, flaws } from './flawReasons';
import { materials } from './materialNames';
import { finishes, reasons } from './reasons';
import { grits, stepsWithin } from './stepNames';

/** What is said of a stone: verdicts and reasons, steps, materials, finishes, cautions. */
export const verdicts = {
  /** Verdicts as titles. */
  actions: {
    advance: 'Advance',
    repeat: 'Repeat',
    'back-to-coarse': 'Back to coarse',
    'set-aside': 'Set aside',
    finished: 'Finished',
    'look-closer': 'Look closer',
  },
  /** Verdicts within a sentence. */
  actionsWithin: {
    advance: 'advance',
    repeat: 'repeat',
    'back-to-coarse': 'back to coarse',
    'set-aside': 'set aside',
    finished: 'finished',
    'look-closer': 'look closer',
  },
  steps: { coarse: 'Coarse', medium: 'Medium', fine: 'Fine', prepolish: 'Pre-polish', polish: 'Polish' },
  stepsWithin,
  grits,
  /** Usual charges: common practice; vibratory ones are for a bowl of about 18 lb. */
  charges: {
    coarse:
      '1 level tablespoon per pound of stones, barrel two thirds to three quarters full, water just to the top layer',
    medium: '2 tablespoons',
    fine: '1 tablespoon, with 1 tablespoon of borax',
    prepolish: '1 tablespoon, with 1 tablespoon of borax',
    polish: '1 tablespoon, with 1 tablespoon of borax',
  },
  materials,
  /** Why a material needs care. Common practice; local rules and qualified advice come first. */
  hazards: {
    copper:
      'Contains copper: grind it wet only, keep the slurry off skin and out of water, and follow local rules.',
    asbestos:
      'Some serpentines contain asbestos: have it identified before you grind it, never work it dry, and follow local rules.',
    'asbestos-fibers':
      'Quartz grown through asbestos fibers: the finished stone is safe, but never work it dry.',
  },
  finishes,
  flaws,
  flawPlurals,
  flawTitles: { pit: 'Pit', fracture: 'Fracture', chip: 'Chip', scratch: 'Scratch' },
  stone: (number: number | string) => `Stone ${number}`,
  /** Within a sentence. */
  stoneWithin: (number: number | string) => `stone ${number}`,
  /** Why a stone has its verdict. */
  reasons,
  /** What can hurt a person, a drain or the water, and what to do. Common practice. */
  cautionTitles: { slurry: 'Slurry', dust: 'Dust', eyes: 'Eyes', 'hazardous-stones': 'Hazardous stones' },
  cautions: {
    slurry:
      'Never pour slurry down a drain: it sets like cement. Let it settle, pour off the clear water where your local rules allow it, and put the mud out with solid waste.',
    dust: 'Keep all work with silica wet. For anything dry, wear a respirator rated for fine dust: the dust scars lungs for good.',
    eyes: 'Wear eye protection whenever you break, chisel or saw stone.',
    'hazardous-stones':
      'Some stones are harmful to grind: asbestos in some serpentines, copper in malachite and chrysocolla, and minerals of arsenic, lead or mercury such as realgar and cinnabar. When you are not sure what a stone is, leave it. Follow local rules and ask someone qualified.',
  },
  safety: 'Safety',
  safetyInShort: 'Safety in short',
  beforeYouStart:
    '**Before you start:** no slurry down a drain, keep silica wet, protect eyes and lungs, and know your stone: some are hazardous.',
  readWhy: 'Read why',
  understood: 'Understood',
} as const;
