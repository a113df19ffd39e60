import type { Texts } from '../texts';
import { flawPlurals, flaws } from './flawReasons';
import { materials } from './materialNames';
import { finishes, reasons } from './reasons';
import { grits, steps } from './stepNames';

export const verdicts: Texts['verdicts'] = {
  actions: {
    advance: 'Weiter',
    repeat: 'Wiederholen',
    'back-to-coarse': 'Zurück zum Grobschliff',
    'set-aside': 'Aussondern',
    finished: 'Fertig',
    'look-closer': 'Genauer ansehen',
  },
  actionsWithin: {
    advance: 'weiter',
    repeat: 'wiederholen',
    'back-to-coarse': 'zurück zum Grobschliff',
    'set-aside': 'aussondern',
    finished: 'fertig',
    'look-closer': 'genauer ansehen',
  },
  steps,
  stepsWithin: steps,
  grits,
  charges: {
    coarse:
      '1 gestrichener Esslöffel je 450 g Steine, Trommel zu zwei Dritteln bis drei Vierteln voll, Wasser bis knapp an die oberste Lage',
    medium: '2 Esslöffel',
    fine: '1 Esslöffel, dazu 1 Esslöffel Borax',
    prepolish: '1 Esslöffel, dazu 1 Esslöffel Borax',
    polish: '1 Esslöffel, dazu 1 Esslöffel Borax',
  },
  materials,
  hazards: {
    copper:
      'Enthält Kupfer: nur nass schleifen, den Schleifschlamm nicht an die Haut und nicht ins Wasser lassen und die örtlichen Vorschriften beachten.',
    asbestos:
      'Manche Serpentine enthalten Asbest: vor dem Schleifen bestimmen lassen, nie trocken bearbeiten und die örtlichen Vorschriften beachten.',
    'asbestos-fibers':
      'Quarz, der durch Asbestfasern gewachsen ist: Der fertige Stein ist unbedenklich, aber bearbeite ihn nie trocken.',
  },
  finishes,
  flaws,
  flawPlurals,
  flawTitles: flaws,
  stone: (number) => `Stein ${number}`,
  stoneWithin: (number) => `Stein ${number}`,
  reasons,
  cautionTitles: {
    slurry: 'Schleifschlamm',
    dust: 'Staub',
    eyes: 'Augen',
    'hazardous-stones': 'Gefährliche Steine',
  },
  cautions: {
    slurry:
      'Gieß Schleifschlamm nie in den Abfluss: Er wird hart wie Zement. Lass ihn absetzen, gieß das klare Wasser ab, wo die örtlichen Vorschriften es erlauben, und gib den Schlamm in den Restmüll.',
    dust: 'Halte bei Quarz und allen kieseligen Steinen alles nass. Trag bei trockener Arbeit eine Atemschutzmaske für Feinstaub: Der Staub vernarbt die Lunge für immer.',
    eyes: 'Trag einen Augenschutz, wann immer du Stein brichst, meißelst oder sägst.',
    'hazardous-stones':
      'Manche Steine sind beim Schleifen schädlich: Asbest in manchen Serpentinen, Kupfer in Malachit und Chrysokoll und Minerale mit Arsen, Blei oder Quecksilber wie Realgar und Zinnober. Bist du nicht sicher, was ein Stein ist, lass ihn liegen. Halte dich an die örtlichen Vorschriften, und frag jemanden vom Fach.',
  },
  safety: 'Sicherheit',
  safetyInShort: 'Sicherheit in Kürze',
  beforeYouStart:
    '**Bevor du anfängst:** kein Schleifschlamm in den Abfluss, Quarzstaub nass halten, Augen und Lunge schützen und deinen Stein kennen: Manche sind gefährlich.',
  readWhy: 'Lies, warum',
  understood: 'Verstanden',
};
