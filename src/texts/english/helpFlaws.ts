import { tray } from './tray';

/** What the four flaws look like and what becomes of them. */
export const flaws = {
  intro: 'Four things keep a stone back. Each has its own mark on the picture.',
  pits: 'A pit is a small hollow. The side toward the lamp lies in shadow, the far side catches light. Its floor is dull, even when the skin around it shines. It has the stone’s own color.',
  pitsGoOn:
    'Pits grind out: more time in coarse. Until then they hold grit. One grain carried into a finer step scratches the whole batch. *Marked with a ring.*',
  fractures:
    'A fracture is a crack: a thin, dark, crooked line. It does not follow the bands of the stone. Often its far lip catches light.',
  fracturesGoOn:
    'Fractures often do not grind out, and may open further. A long one is a reason to saw the stone, break it there, or keep it as it is. *Marked with four corners.*',
  chips:
    'A chip is a piece knocked off an edge: a wide, shallow bite with a sharp rim and a rough face. Stones chip when a barrel is too empty (common practice).',
  chipsGoOn: 'Shallow chips grind out in coarse. *Marked with a diamond.*',
  scratches:
    'A fresh scratch is a straight, thin line that shines. One coarse grain in a fine step makes many. They are looked for in fine, pre-polish and polish.',
  scratchesGoOn:
    'Scratches on several stones mean that coarser grit is in the batch. Wash everything out, and go back to the step that the list names. *Marked with a line on either side.* Pale and busy stones hide their scratches: take a loupe to them. [What is missed](/help/trust)',
} as const;

/** What looks like a flaw and is none, and how to tell. */
export const pattern = {
  intro:
    'Bands, specks, grains, orbs and moss are color, not shape. They may be as dark as a pit and as thin as a crack. A thumb-nail glides over them. These five stones have no flaw at all:',
  moveLamp: 'Pit or pattern? Move the lamp',
  how: `Carry the lamp a third of the way around the tray and take a second photo. Press *${tray.lampMoved.add}*. Pattern stays as it is. The shading of a hollow goes around with the lamp.`,
} as const;

/** The five finishes, told by the lamp's image. */
export const finishes = {
  intro:
    'Look at the lamp’s image on the stone. The smoother the skin, the smaller, brighter and sharper it is.',
  from: (gu: string) => `${gu} gloss units and more`,
  below: (gu: string) => `below ${gu} gloss units`,
  between: (from: string, to: string) => `${from} to ${to} gloss units`,
  /** A finish with its range and what is seen. */
  caption: (finish: string, range: string, looks: string) => `**${finish}**, ${range}. ${looks}`,
  outro:
    'The names follow published gloss levels for paint (from memory). Hard, dense agate can end at a mirror. Some jaspers stop at satin whatever you do: that is the stone, not you.',
} as const;
