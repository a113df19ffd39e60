import { finishes, flaws, pattern } from './helpFlaws';
import { numbers, verdicts } from './helpNumbers';
import { alts, captions } from './helpPictures';
import { questions } from './helpQuestions';
import { setup } from './helpSetup';
import { missed, reached, trust } from './helpTrust';

/** The head of the help page, and its sections in their order. */
const page = {
  title: 'Help',
  about: 'All of it is on this device. Every picture was rendered by us, so what is on it is known.',
  contents: 'On this page',
} as const;

const sections = {
  flaws: 'Pits, fractures, chips, scratches',
  pits: 'Pits',
  fractures: 'Fractures',
  chips: 'Chips',
  scratches: 'Scratches',
  pattern: 'Pattern that is no flaw',
  finishes: 'Matte to mirror: the five finishes',
  verdicts: 'What the verdicts mean',
  numbers: 'How the numbers come about',
  trust: 'How far to trust them',
  setup: 'Setting up lamp and ball',
  questions: 'Questions',
} as const;

/** The texts of the help page in English. They are opened with that page, see `openHelpTexts`. */
export const help = {
  ...{ page, sections, alts, captions, flaws, pattern, finishes, verdicts, numbers },
  ...{ trust, missed, reached, setup, questions },
};
