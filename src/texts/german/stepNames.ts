import type { Step } from '../../grading/steps';
import type { Texts } from '../texts';

type Steps = Readonly<Record<Step, string>>;

/** Gänge am Anfang und mitten im Satz: Hauptwörter, beide Male gleich. */
export const steps: Steps = {
  coarse: 'Grobschliff',
  medium: 'Mittelschliff',
  fine: 'Feinschliff',
  prepolish: 'Vorpolitur',
  polish: 'Politur',
};

const isFeminine = (step: Step) => step === 'prepolish' || step === 'polish';
const said = (feminine: string, masculine: string) => (step: Step) =>
  `${isFeminine(step) ? feminine : masculine} ${steps[step]}`;

/** "der Grobschliff", "die Politur". */
export const theStep = said('die', 'der');
/** "im Grobschliff", "in der Politur". */
export const inStep = said('in der', 'im');
/** "nach dem Grobschliff", "nach der Politur". */
export const afterStep = said('nach der', 'nach dem');
/** "zum Grobschliff", "zur Politur". */
export const toStep = said('zur', 'zum');

export const grits: Texts['verdicts']['grits'] = {
  coarse: 'Siliciumcarbid 60/90',
  medium: 'Siliciumcarbid 220',
  fine: 'Siliciumcarbid 600',
  prepolish: 'Siliciumcarbid 1500',
  polish: 'Aluminiumoxid-Politur',
};

/** Wohin zerkratzte Steine gehen, als Satzende; null heißt: diesen Gang noch einmal. */
export const wayBack = (step: Step | null) =>
  step === null ? 'wiederhole diesen Gang' : `geh zurück ${toStep(step)}`;
