import { page } from './page';

/** Questions that come up at the bench. */
export const questions = {
  'look-closer': {
    asked: 'Why does it say look closer?',
    answer:
      'The photo cannot decide. A mark is too faint to be sure of, the gloss interval lies across a limit, the edge of the photo cuts the stone off, or too little of it was seen. The reason says which. Take it in your hand: a loupe and a thumb-nail decide in seconds.',
  },
  'no-gloss': {
    asked: 'Why is there no gloss number?',
    answer:
      'The photo did not carry one. The stone may be so matte, or so busy, that the lamp’s image drowns in its pattern; then it says what it has at most. Or lamp and camera are not where they were, or a second light shone on it. An invented number would look as sure as a real one.',
  },
  'not-twice': {
    asked: 'Why is it not twice the same?',
    answer:
      'Another side is up, or the lamp’s image falls on another spot. The same stone turned about spreads by about four gloss units. Compare the intervals, not the numbers. If all stones changed alike, lamp or camera did: see [Setting up](/help/setup).',
  },
  wet: {
    asked: 'Why does it say my stone is wet?',
    answer: 'It shines more than its step can make it. Dry it. If it was dry, check the step you chose.',
  },
  'sent-back': {
    asked: 'Why was a good stone sent back?',
    answer: `Look at the marks first: it may have taken pattern for pits. If the marks are right, it was over one of your limits. Set them to your taste under *${page.setup}*. You decide, not the program.`,
  },
  satin: {
    asked: 'It stays satin. Is it me or the stone?',
    answer:
      'Compare it with its ceiling, and with others of its kind. If one more polish brings nothing, and many pieces of its kind stop there, call it finished.',
  },
  'one-of-two': {
    asked: 'Two stones were taken for one.',
    answer: 'They touch. Lay them a finger apart and take the photo again.',
  },
  'no-ball': {
    asked: 'Can I do without the ball?',
    answer:
      'Yes, once lamp and camera are remembered and stay where they are. With the ball it is safer: it notices changes that nothing else in the photo shows.',
  },
  network: {
    asked: 'Does it need a network? Where do my photos go?',
    answer:
      'Nowhere. All of it is done on this device. Save the journal now and then: this browser is the only place it is in.',
  },
} as const;
