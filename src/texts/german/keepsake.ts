import type { Texts } from '../texts';

export const keepsake: Texts['keepsake'] = {
  savePoster: 'Plakat sichern',
  saveCard: 'Vorher/nachher sichern',
  drawing: 'Das Bild wird gezeichnet …',
  saved: 'Gesichert.',
  failed: 'Das Bild ließ sich auf diesem Gerät nicht sichern: Mach stattdessen ein Bildschirmfoto.',

  days: (from, to) => `${from} bis ${to}`,
  checks: (count) => (count === 1 ? '1 Kontrolle' : `${count} Kontrollen`),
  stones: (count, favorites) => {
    const total = count === 1 ? '1 Stein' : `${count} Steine`;
    return favorites === 0
      ? total
      : `${total}, davon ${favorites} ${favorites === 1 ? 'Lieblingsstein' : 'Lieblingssteine'}`;
  },
  counted: (count, action) => `${count} ${action}`,

  moment: (step, length) => `nach ${step}, ${length} lang`,
  weeksInCoarse: (count) => (count === 1 ? '1 Woche im Grobschliff' : `${count} Wochen im Grobschliff`),
  gloss: 'Glanz, geschätzt',
  ceiling: (gu) => `Höchstglanz ${gu}`,
  thenReading: (gu, low, high) => `damals ${gu} (${low} bis ${high})`,
  nowReading: (gu, low, high) => `jetzt ${gu} (${low} bis ${high})`,
  thenNoNumber: 'damals: keine Zahl',
  nowNoNumber: 'jetzt: keine Zahl',
};
