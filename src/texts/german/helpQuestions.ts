import type { HelpTexts } from '../texts';
import { page } from './page';

export const questions: HelpTexts['questions'] = {
  'look-closer': {
    asked: 'Warum heißt es „genauer ansehen“?',
    answer:
      'Das Foto kann nicht entscheiden. Ein Zeichen ist zu schwach, um sicher zu sein, die Spanne des Glanzes liegt quer über einem Grenzwert, der Rand des Fotos schneidet den Stein ab, oder es war zu wenig von ihm zu sehen. Die Begründung sagt, was davon. Nimm ihn in die Hand: Lupe und Daumennagel entscheiden in Sekunden.',
  },
  'no-gloss': {
    asked: 'Warum steht da keine Zahl für den Glanz?',
    answer:
      'Das Foto gab keine her. Vielleicht ist der Stein so matt oder so unruhig gezeichnet, dass das Bild der Lampe darin untergeht; dann steht da, wie viel er höchstens hat. Oder Lampe und Kamera sind nicht mehr, wo sie waren, oder ein zweites Licht fiel auf ihn. Eine erfundene Zahl sähe so sicher aus wie eine echte.',
  },
  'not-twice': {
    asked: 'Warum ist es nicht zweimal gleich?',
    answer:
      'Eine andere Seite liegt oben, oder das Bild der Lampe fällt auf eine andere Stelle. Derselbe Stein, hin und her gedreht, streut um etwa vier Glanzeinheiten. Vergleich die Spannen, nicht die Zahlen. Haben sich alle Steine gleich verändert, waren es Lampe oder Kamera: siehe [Aufbauen](/help/setup).',
  },
  wet: {
    asked: 'Warum soll mein Stein nass sein?',
    answer:
      'Er glänzt mehr, als sein Gang zustande bringt. Trockne ihn ab. War er trocken, prüf, welchen Gang du gewählt hast.',
  },
  'sent-back': {
    asked: 'Warum wurde ein guter Stein zurückgeschickt?',
    answer: `Sieh dir zuerst die Zeichen an: Vielleicht hat es Zeichnung für Grübchen gehalten. Stimmen die Zeichen, lag er über einem deiner Grenzwerte. Stell sie unter *${page.setup}* nach deinem Geschmack ein. Du entscheidest, nicht das Programm.`,
  },
  satin: {
    asked: 'Er bleibt seidenmatt. Liegt es an mir oder am Stein?',
    answer:
      'Vergleich ihn mit seinem Höchstglanz und mit anderen seiner Art. Bringt noch eine Politur nichts, und bleiben viele Stücke seiner Art dort stehen, dann nenn ihn fertig.',
  },
  'one-of-two': {
    asked: 'Zwei Steine wurden für einen gehalten.',
    answer: 'Sie berühren sich. Leg sie einen Fingerbreit auseinander und mach das Foto noch einmal.',
  },
  'no-ball': {
    asked: 'Geht es ohne die Kugel?',
    answer:
      'Ja, sobald Lampe und Kamera gemerkt sind und bleiben, wo sie sind. Mit der Kugel ist es sicherer: Sie bemerkt Änderungen, die sonst nichts im Foto verrät.',
  },
  network: {
    asked: 'Braucht es ein Netz? Wohin gehen meine Fotos?',
    answer:
      'Nirgendwohin. Alles geschieht auf diesem Gerät. Sichere das Journal ab und zu: Es liegt nur in diesem Browser.',
  },
};
