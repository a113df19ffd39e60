import type { HelpTexts } from '../texts';
import { finishes, flaws, pattern } from './helpFlaws';
import { numbers, verdicts } from './helpNumbers';
import { alts, captions } from './helpPictures';
import { questions } from './helpQuestions';
import { setup } from './helpSetup';
import { missed, reached, trust } from './helpTrust';

const page: HelpTexts['page'] = {
  title: 'Hilfe',
  about:
    'Alles davon liegt auf diesem Gerät. Jedes Bild haben wir selbst gerendert, darum ist bekannt, was darauf ist.',
  contents: 'Auf dieser Seite',
};

const sections: HelpTexts['sections'] = {
  flaws: 'Grübchen, Risse, Ausbrüche, Kratzer',
  pits: 'Grübchen',
  fractures: 'Risse',
  chips: 'Ausbrüche',
  scratches: 'Kratzer',
  pattern: 'Zeichnung, die kein Fehler ist',
  finishes: 'Von matt bis spiegelnd: die fünf Oberflächen',
  verdicts: 'Was die Urteile bedeuten',
  numbers: 'Wie die Zahlen entstehen',
  trust: 'Wie weit du ihnen trauen kannst',
  setup: 'Lampe und Kugel aufbauen',
  questions: 'Fragen',
};

/** Die Texte der Hilfe auf Deutsch. */
export const help: HelpTexts = {
  ...{ page, sections, alts, captions, flaws, pattern, finishes, verdicts, numbers },
  ...{ trust, missed, reached, setup, questions },
};
