import type { Texts } from '../texts';

export const keep: Texts['keep'] = {
  title: 'Diese Kontrolle aufheben',
  keep: 'Aufheben',
  keeping: 'Wird aufgehoben …',
  again: 'Noch einmal aufheben',
  kept: {
    before: 'Im Journal aufgehoben unter ',
    after: '. Das bleibt, wie es ist, was immer du hier änderst.',
    itsBatch: 'ihrer Partie',
  },
  keptUndo: (photo) => `${photo} ist im Journal.`,
  batch: 'Partie',
  newBatch: 'Eine neue Partie',
  itsName: 'Ihr Name',
  batchOf: (day) => `Partie vom ${day}`,
  otherSide: 'Eine andere Seite der Steine, die heute aufgehoben wurden: Beide Seiten zählen zusammen',
  which: {
    title: 'Welcher Stein ist welcher?',
    later: 'Nicht jetzt',
    done: 'Stimmt so: aufheben',
    compare: (known, count, all) =>
      `${known} von ${count} ${known === 1 ? 'ist' : 'sind'} bekannt. Vergleich ${all ? 'sie' : 'die anderen'} und tipp auf den richtigen, wo es nicht stimmt: Die beiden tauschen dann die Plätze.`,
    place: (place) => `Nummer ${place} ist`,
    placeInPhoto: (place) => `Stein ${place} dieses Fotos ist`,
    known: (name) => `Stein ${name}`,
    fresh: 'neu',
    others: 'Andere',
  },
};
