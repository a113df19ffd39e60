/** One thing that can hurt a person, a drain or the water. */
export interface Caution {
  readonly about: string;
  readonly text: string;
}

/** Shown wherever grinding is described. Source: common practice; local rules and qualified advice come first. */
export const CAUTIONS: readonly Caution[] = [
  {
    about: 'Slurry',
    text: 'Never pour slurry down a drain: it sets like cement. Let it settle, pour off the clear water where your local rules allow it, and put the mud out with solid waste.',
  },
  {
    about: 'Dust',
    text: 'Keep all work with silica wet. For anything dry, wear a respirator rated for fine dust: the dust scars lungs for good.',
  },
  {
    about: 'Eyes',
    text: 'Wear eye protection whenever you break, chisel or saw stone.',
  },
  {
    about: 'Hazardous stones',
    text: 'Some stones are harmful to grind: asbestos in some serpentines, copper in malachite and chrysocolla, and minerals of arsenic, lead or mercury such as realgar and cinnabar. When you are not sure what a stone is, leave it. Follow local rules and ask someone qualified.',
  },
];
