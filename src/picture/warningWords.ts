import type { WarningCode } from '../image/notice';

/** A few words for each warning that can be pointed at, for the key below the sorting picture. */
export const WARNING_WORDS: Partial<Readonly<Record<WarningCode, string>>> = {
  blurred: 'Blurred',
  'too-dark': 'Too dark',
  clipped: 'Too bright here',
  'ball-clipped': 'Lamp too bright on the ball',
  'second-light': 'Second light',
  'lamp-partly': 'Lamp partly hidden',
  'wet-stones': 'Wet',
  'lamp-too-large': 'Lamp too large',
  'stone-cut-off': 'Cut off by the edge',
  'low-resolution': 'Too few pixels',
};
