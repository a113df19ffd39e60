import type { Texts } from '../texts';
import { materials } from './materialNames';
import { finishes } from './reasons';
import { afterStep, inStep, theStep } from './stepNames';

const UNITS = { day: ['Tag', 'Tage'], week: ['Woche', 'Wochen'] } as const;
const are = (count: number) => (count === 1 ? 'ist' : 'sind');
const many = (count: number) => (count === 1 ? 'schafft es' : 'schaffen es');

/** „3. Oktober 2026“; was kein Tag ist, wie es ist. */
function dayWords(day: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  return new Intl.DateTimeFormat('de', { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}

const capitalized = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

export const history: Texts['history'] = {
  about: (count, unit, range) =>
    `etwa ${count} ${UNITS[unit][count === 1 ? 0 : 1]}${range === null ? '' : ` (${range[0]} bis ${range[1]})`}`,
  ready: 'Seine Grübchen und Risse liegen in deinen Grenzwerten.',
  other:
    'Seine Grübchen und Risse liegen in deinen Grenzwerten; was ihn zurückhält, lässt sich nicht vorhersagen.',
  early: 'Ein Blick auf eine Seite sagt noch nichts über die nächsten: erst zwei oder mehr.',
  stays: (kind, checks, floor, limit) =>
    `Dieser Restfehler geht kaum noch weg: Nach ${checks} Kontrollen läuft es bei ${kind === 'pit' ? 'den Grübchen' : 'den Rissen'} auf etwa ${floor} hinaus, und ${limit} dürfen bleiben. Säg ihn, brich das Stück ab, oder nimm ihn, wie er ist.`,
  tooSmallFirst: (wait, length, least) =>
    `Er bräuchte noch ${wait}, und bis dahin ist er nur noch etwa ${length} lang: kleiner als dein kleinstes Maß von ${least}. Sondere ihn aus, oder nimm ihn, wie er ist.`,
  clears: (wait) => `Noch ${wait} im Grobschliff.`,
  batchReady: (ready, all) => `${ready} von ${all} ${are(ready)} so weit`,
  batchClears: (count, halfIn) =>
    count === 1
      ? `1 weiterer schafft es noch und braucht dazu ${halfIn}`
      : `${count} weitere schaffen es noch, die Hälfte davon braucht dazu ${halfIn}`,
  batchStays: (count) => `${count} ${many(count)} kaum`,
  batchOthers: (count) => `${count} ${count === 1 ? 'wird' : 'werden'} von etwas anderem zurückgehalten`,
  batchEarly: (count) =>
    `${count} ${count === 1 ? 'braucht' : 'brauchen'} einen zweiten Blick auf dieselbe Seite`,
  glossStuck: (then, before, now, step) =>
    `Steckt fest: ${capitalized(afterStep(before))} waren es ${then} Glanzeinheiten, jetzt sind es ${now}, und ${theStep(step)} sollte ihn glatter machen. Noch einmal dasselbe hilft kaum: Geh ein Korn zurück, oder nimm ihn, wie er ist.`,
  glossLate: (now, step) => `Hinkt nach: ${now} Glanzeinheiten, ${afterStep(step)} sollte er glatter sein.`,
  glossOnTime: (now, step) =>
    `Im Plan: ${now} Glanzeinheiten sind, was ${afterStep(step)} zu erwarten ist, oder mehr.`,
  learnedPits: (step, usual, per, limit) =>
    `Du lässt Steine ${afterStep(step)} meist mit bis zu ${usual} Grübchen ${per} weitergehen; dein Grenzwert ist ${limit}. Soll das dein Grenzwert werden?`,
  learnedFractures: (step, usual, limit) =>
    `Du lässt Steine ${afterStep(step)} meist mit bis zu ${usual} Rissen weitergehen; dein Grenzwert ist ${limit}. Soll das dein Grenzwert werden?`,
  opened: (kind, day, step) =>
    `Mehr ${kind === 'pit' ? 'Grübchen' : 'Riss'} als bei der Kontrolle vom ${dayWords(day)}, und ${inStep(step)} entstehen keine: Ein Riss hat sich geöffnet. Zurück zum Grobschliff, und sieh ihn unter der Lupe an; in so einem Riss sitzt Korn.`,
  usualEnd: (material, finished, quartile, reads) =>
    `Er liegt dort, wo ${material === null ? 'solche Steine' : materials[material]} hier meist ${material === null ? 'enden' : 'endet'}: Von ${finished} fertigen haben drei von vier ${quartile} Glanzeinheiten oder mehr, dieser ${reads}.`,
  polishBroughtNothing: (material, finish) =>
    `Eine weitere Politur brachte nichts, und ${materials[material]} bleibt oft ${finishes[finish]}: Nimm ihn als fertig.`,
  underPolished: (finished, quartile) =>
    `Eher zu wenig poliert als am Ende: Von ${finished} fertigen seiner Art haben drei von vier ${quartile} Glanzeinheiten oder mehr.`,
  pitsStand:
    'Seine Grübchen sind in drei Kontrollen nicht weniger geworden. Fotos zählen Grübchen schlecht, also fühl mit dem Daumennagel nach; sind alle noch da, bringt mehr vom Gleichen nichts.',
};
