import type { Texts } from '../texts';
import { flawReasons } from './flawReasons';
import { materials } from './materialNames';
import { afterStep, theStep } from './stepNames';

export const finishes: Texts['verdicts']['finishes'] = {
  matte: 'matt',
  satin: 'seidenmatt',
  'semi-gloss': 'halbglänzend',
  gloss: 'glänzend',
  mirror: 'spiegelnd',
};

const atMost = (gu: string | null) => (gu === null ? '' : `: höchstens etwa ${gu} Glanzeinheiten bei 60°`);
const capitalized = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

export const reasons: Texts['verdicts']['reasons'] = {
  ...flawReasons,
  reading: (gu, low, high) => `${gu} Glanzeinheiten bei 60° (${low} bis ${high})`,
  dullAsGround: (reading, step) => `Etwa ${reading}: stumpf, wie ${theStep(step)} ihn lässt.`,
  expected: (reading, least, step) =>
    `Etwa ${reading}; ${afterStep(step)} sind ${least} oder mehr zu erwarten.`,
  maybeSmooth: (reading, least, step) =>
    `Etwa ${reading}, das ist nicht sicher genug: ${capitalized(afterStep(step))} sind ${least} oder mehr zu erwarten. Fotografiere ihn noch einmal, mit einer gewölbten Seite zur Lampe.`,
  couldBeEnough: 'Es könnte gerade reichen, also vergleiche ihn mit den anderen.',
  polished: (reading, finish, share, material, ceiling) =>
    `Etwa ${reading}, ${finishes[finish]}: ${share} seines Höchstglanzes; perfekt poliert erreicht ${materials[material ?? 'quartz']} ${ceiling}.`,
  couldBeLess: (low, wanted) =>
    `Es könnten auch nur ${low} sein, und fertig heißt ${wanted}: Vergleiche ihn mit einem Stein, den du kennst.`,
  finishedMeans: (wanted, gu) => `Fertig heißt ${wanted}, also ${gu} Glanzeinheiten.`,
  couldBeMore: (high) => `Es könnten auch ${high} sein.`,
  oftenStops: (material, finish) =>
    `${capitalized(materials[material])} bleibt oft ${finishes[finish]}: Bringt eine weitere Politur nichts, nimm ihn als fertig.`,
  dullExpected: (most, step) =>
    `Kein Glanzlicht sticht hervor${atMost(most)}; so soll es ${afterStep(step)} sein.`,
  tooDull: (most, expected, step) =>
    `Kein Glanzlicht sticht hervor${atMost(most)}; ${afterStep(step)} sind ${expected} oder mehr zu erwarten.`,
  highlightMissing: (most, step) =>
    `Kein Glanzlicht gefunden${atMost(most)}, und ${afterStep(step)} sollte eines da sein. Dreh eine gewölbte Seite zur Lampe, und fotografiere ihn noch einmal.`,
  wet: (reading, most, step, isSure) =>
    `Er zeigt ${reading}, und ${theStep(step)} lässt höchstens ${most}: Er ${isSure ? 'sieht nass aus' : 'ist vielleicht nass'}. Trockne ihn, und fotografiere ihn noch einmal; ist er trocken, prüf den Gang.`,
  secondLight:
    'Sein Glanz wurde nicht gemessen, weil sein Glanzlicht dort liegt, wo er ein zweites Licht spiegelt: Schalte dieses Licht aus, und nimm das Foto noch einmal auf.',
  rigMoved:
    'Sein Glanz wurde nicht gemessen, weil Lampe oder Kamera nicht stehen, wo sie standen: Leg die Kugel in die Schale, und nimm das Foto noch einmal auf.',
  unlike: {
    shadow:
      'Sein Schatten ist keiner, den ein Stein im Licht der Lampe wirft, wie bei Flachem, bei einem Bild oder falschem Umriss: Sieh selbst nach.',
    round:
      'Sein Umriss ist gleichmäßiger, als das Trommeln einen Stein macht, wie bei Murmel, Münze, Frucht oder Bohne: Sieh selbst nach.',
    ragged:
      'Er ist länger oder zerklüfteter als ein getrommelter Stein, ist also vielleicht keiner, oder sein Umriss stimmt nicht: Sieh selbst nach.',
    photo:
      'Eine Warnung zu diesem Foto spricht gegen alles, was darauf liegt: Behebe das, und nimm es noch einmal auf.',
  },
  cutOff: 'Der Rand des Fotos schneidet diesen Stein ab: Rück ihn ins Bild.',
  fewPixels: (along) => `Er ist nur ${along} Pixel lang, zu wenig, um Grübchen zu sehen: Geh näher heran.`,
  littleInspected: (share) =>
    `Nur ${share} von dem, was das Foto von ihm zeigt, ließ sich beurteilen: Dreh ihn, und nimm noch eines auf.`,
  tooSmall: (length, least) =>
    `Er ist nur noch ${length} lang, und unter ${least} kostet Weiterschleifen mehr Stein, als es bessert. Behalte ihn, wie er ist, oder sondere ihn aus.`,
};
