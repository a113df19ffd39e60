import type { Step } from '../../grading/steps';
import type { Texts } from '../texts';
import { verdicts } from './verdicts';

const { steps } = verdicts;
/** "in der Politur", "im Feinschliff"; "zur Politur", "zum Feinschliff". */
const isFeminine = (step: Step) => step === 'prepolish' || step === 'polish';
const within = (step: Step) => `${isFeminine(step) ? 'in der' : 'im'} ${steps[step]}`;
const towards = (step: Step) => `${isFeminine(step) ? 'zur' : 'zum'} ${steps[step]}`;
const before = (step: Step) => `vor ${isFeminine(step) ? 'der' : 'dem'} ${steps[step]}`;
const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tagen`);
const stones = (count: number) => (count === 1 ? '1 Stein' : `${count} Steine`);
const charges = (count: number) => (count === 1 ? '1 Kornzugabe' : `${count} Kornzugaben`);
const sayLoad = 'Trag im Journal ein, was deine Maschine fasst, dann wird es darauf umgerechnet';

export const plan: Texts['plan'] = {
  title: 'Plan',
  cancel: 'Abbrechen',
  save: 'Speichern',

  due: 'Fällig',
  overdue: 'Überfällig',
  today: 'Heute',
  soon: 'In den nächsten Tagen',
  later: 'Später',
  nothingDue:
    'Nichts ist fällig. Starte in einer Partie einen Lauf, dann steht hier der Tag der nächsten Kontrolle.',
  unknownBatches: 'Noch ohne Kornzugabe und Kontrolle:',
  noCharge: 'keine Kornzugabe seit der letzten Kontrolle notiert',
  free: 'Gerade frei:',
  calendar: 'Als Kalenderdatei sichern',
  dueToday: 'heute',
  dueTomorrow: 'morgen',
  dueIn: (count) => `in ${days(count)}`,
  dueOver: (count) => `seit ${days(count)}`,
  turning: (step, machine, day) =>
    `${steps[step]}${machine === null ? '' : ` in ${machine}`}, ${day === 0 ? 'Korn heute zugegeben' : `Tag ${day} seit der Kornzugabe`}`,

  filling: 'Wie voll',
  fillingEmpty:
    'Heb eine Kontrolle einer Partie auf, dann steht hier, wie voll ihre Maschine mit den Steinen ist, die bleiben.',
  fillingHow:
    'Füll nur mit Steinen auf, die höchstens etwa eine Mohs-Stufe härter oder weicher sind. Die Gewichte sind aus dem Foto geschätzt: jeder Stein als Ellipsoid aus Quarz (2,65 g/cm³), 0,7-mal so dick wie breit. So weit der Balken blass ist, kann das danebenliegen. Eine volle Ladung ist, was die Maschine nach deiner Angabe fasst.',
  afterCheck: (day) => `nach der Kontrolle am ${day}`,
  inStep: (count, step) => `${stones(count)} ${count === 1 ? 'ist' : 'sind'} ${within(step)}`,
  staysIn: (count, step) => `${stones(count)} ${count === 1 ? 'bleibt' : 'bleiben'} ${within(step)}`,
  goesBack: (count, step) => `${stones(count)} ${count === 1 ? 'geht' : 'gehen'} zurück ${towards(step)}`,
  goesTo: (count, step) => `${stones(count)} ${count === 1 ? 'geht' : 'gehen'} weiter ${towards(step)}`,
  groupWeight: (weight, low, high) => `, etwa ${weight} (${low} bis ${high})`,
  shareOfLoad: (share, low, high, machine, load) =>
    `${share} einer vollen Ladung in ${machine} (${low} bis ${high}); voll sind es ${load}.`,
  sayLoad: (machine, type) =>
    `Trag im Journal ein, was ${machine} fasst, dann steht hier, wie voll die ${type === 'rotary' ? 'Trommel' : 'Schüssel'} ist.`,
  fillFull: 'Das ist eine volle Ladung: nichts dazugeben.',
  fillTooMuch: (weight) => `Etwa ${weight} zu viel: Lass einige bis zur nächsten Kornzugabe warten.`,
  fillAdd: (weight, step) =>
    `Gib etwa ${weight} andere Steine dazu, die auch ${within(step)} sind, oder Keramikfüllkörper.`,
  fillWaitOrAdd: (weight, step) =>
    `Lass sie auf weitere warten, oder gib etwa ${weight} andere Steine dazu, die auch ${within(step)} sind, oder Keramikfüllkörper.`,

  grit: 'Kornvorrat',
  gritEmpty: 'Sag, wie viel du von einem Korn hast; jeder Lauf zieht dann seine Kornzugabe ab.',
  gritHow:
    'Die Gramm folgen aus gestrichenen Löffeln und stimmen auf ein Fünftel. Jede Kontrolle im Grobschliff zählt als weitere Kornzugabe.',
  gritSupply: 'Was',
  gritSave: 'So viel habe ich',
  gritSay: 'Vorrat eintragen',
  grams: 'Gramm',
  pounds: 'Pfund (lb)',
  left: (weight) => `noch ${weight}`,
  enough: (count, machine) =>
    count === 0
      ? `Reicht in ${machine} für keine Kornzugabe mehr`
      : `Reicht in ${machine} noch für ${charges(count)}`,
  counted: (day, count, assumed) => {
    if (count === 0) return `Gezählt am ${day}, seitdem nichts verbraucht`;
    const byRecipe =
      assumed === 0 ? '' : assumed === count ? ', nach Rezept' : `, davon ${assumed} nach Rezept`;
    return `Gezählt am ${day}, seitdem ${charges(count)}${byRecipe}`;
  },

  next: 'Wie es weitergeht',
  machine: 'Maschine',
  start: 'Lauf heute starten',
  recharge: 'Heute Korn nachgegeben',
  goesOn: (day, charge) => `In der Maschine seit ${day}${charge === '' ? '' : `: ${charge}`}.`,
  washFirst: 'Beim Auswaschen ist noch nicht alles abgehakt.',
  apart: (softer, harder) =>
    `${softer} und ${harder} liegen mehr als etwa eine Mohs-Stufe auseinander: Die weicheren Steine werden aufgerieben. Lass sie getrennt laufen.`,

  washOut: 'Auswaschen',
  washOutWhy: 'Ein einziges verschlepptes grobes Korn zerkratzt die Politur.',
  washOutBegin: 'Auswaschen beginnen',
  washOutDone: 'Alles abgehakt. Das feinere Korn darf hinein.',
  washOutOf: (from, to) => `Auswaschen nach ${steps[from]}, ${before(to)}`,
  ticked: (count, all) => `${count} von ${all} abgehakt.`,
  washOutItems: {
    slurry: 'Steine und Schleifschlamm durch ein Sieb über einem Eimer gießen',
    rinse: 'Steine über dem Eimer spülen, bis das Wasser klar abläuft',
    soap: 'Steine mit Spülmittel und Wasser ein bis zwei Stunden in der Maschine laufen lassen',
    'rinse-again': 'Auch das in den Eimer gießen und noch einmal spülen',
    machine: 'Trommel oder Schüssel, Deckel, Rand und Dichtung vom Korn freischrubben',
    stones: 'Jeden Stein bürsten; weglegen, was in Taschen oder Rissen noch Korn hält',
    tools: 'Sieb, Bürste, Löffel und deine Hände schrubben',
    mud: 'Den Eimer absetzen lassen und den Schlamm noch feucht zum Restmüll geben, wie es die örtlichen Vorschriften sagen',
    dry: 'Steine trocknen und unter der Lampe ansehen: kein Korn, kein frischer Kratzer',
  },
  soapStart: 'Läuft ab jetzt',
  soapAgain: 'Zeit neu starten',
  soapLeft: (minutes, from, to) =>
    `Noch ${minutes === 1 ? '1 Minute' : `${minutes} Minuten`}: zwischen ${from} und ${to} Uhr anhalten.`,
  soapLong: (since, by) => `Lange genug seit ${since} Uhr: bis ${by} Uhr anhalten.`,

  common:
    'Was nicht anders gekennzeichnet ist, ist üblich und ohne veröffentlichte Quelle. Sagen die Anleitung deiner Maschine oder örtliche Vorschriften etwas anderes, gilt das.',
  change: 'Mengen ändern',
  asUsual: 'Zurück zum Üblichen',
  undo: 'Rückgängig: meine Mengen',
  noMachine: 'Trag im Journal eine Maschine ein, dann werden die Mengen darauf umgerechnet.',
  noUsual:
    'Grob geschliffen wird meist in der Trommel; für eine Schüssel gibt es keine üblichen Mengen. Deine eigenen kannst du aufschreiben.',
  note: 'Deine Anmerkung',
  daysFrom: 'Tage, von',
  daysTo: 'bis',
  span: (from, to) => {
    const last = to === '1' ? '1 Tag' : `${to} Tage`;
    return from === to ? last : `${from} bis ${last}`;
  },
  thenCheck: 'dann Kontrolle',
  thenCheckAndCharge: 'dann Kontrolle und neues Korn',
  forFullLoad: (load) => `Für eine volle, aufgefüllte Ladung von ${load}`,
  forEach: (weight) => `Für je ${weight} Steine. ${sayLoad}`,
  forBowl: (load) => `Für eine Schüssel von ${load}. ${sayLoad}`,
  room: {
    rotary: 'Trommel zu zwei Dritteln bis drei Vierteln voll',
    vibratory: 'Schüssel bis zu ihrer Nennladung gefüllt',
  },
  water: {
    rotary: 'Wasser bis knapp an die oberste Lage Steine',
    vibratory: 'Nur so viel Wasser, dass jeder Stein nass bleibt und keine Pfütze steht',
  },
  saidBy: { ours: 'unsere Vorgabe', owner: 'deins' },

  borax: 'Borax',
  tablespoons: (number) => `${number} Esslöffel`,
  teaspoons: (number) => `${number} Teelöffel`,
  nothing: 'nichts',
  about: (amount) => `etwa ${amount}`,
  amountOf: (amount, supply) => `${amount} ${supply}`,
  with: ', dazu ',
  inTablespoons: (supply) => `${supply}, Esslöffel`,
  inGrams: (supply) => `${supply}, Gramm`,
};
