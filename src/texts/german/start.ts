import type { Texts } from '../texts';

export const start: Texts['start'] = {
  title: 'Eine Partie beginnen',
  lead: 'Was heute in die Maschine kommt. Nötig ist nur der Name; der Rest macht spätere Vergleiche wertvoller.',
  name: 'Name der Partie',
  nameHint: 'Etwa „Flussachate, Frühjahr“.',
  stones: 'Was sind das für Steine?',
  addMaterial: 'Material hinzufügen',
  choose: 'wählen …',
  drop: (material) => `Ohne ${material}`,
  source: 'Woher kommen sie?',
  sourceHint: 'Ein Fundort, ein Los, ein Kauf: was du später einmal vergleichen willst.',
  machine: 'Welche Maschine?',
  newMachine: 'Andere Maschine',
  step: 'Erster Gang',
  recipe: 'Was hineinkommt',
  begin: 'Diese Partie heute beginnen',
  next: 'Sieh dir auch die Steine vorher an: Fotografiere sie trocken in der Schale, damit es zu jedem Nachher ein Vorher gibt.',
};
