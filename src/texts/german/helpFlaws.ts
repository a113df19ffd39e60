import type { HelpTexts } from '../texts';
import { tray } from './tray';

export const flaws: HelpTexts['flaws'] = {
  intro: 'Vier Dinge halten einen Stein zurück. Jedes hat im Bild sein eigenes Zeichen.',
  pits: 'Ein Grübchen ist eine kleine Mulde. Die Seite zur Lampe hin liegt im Schatten, die andere fängt Licht. Der Grund ist stumpf, auch wenn die Haut ringsum glänzt. Es hat die Farbe des Steins.',
  pitsGoOn:
    'Grübchen schleifen sich aus: mehr Zeit im Grobschliff. Bis dahin halten sie Korn fest. Ein einziges Korn, in einen feineren Gang verschleppt, zerkratzt die ganze Partie. *Im Bild ein Ring.*',
  fractures:
    'Ein Riss ist ein Sprung im Stein: eine dünne, dunkle, krumme Linie. Er folgt den Bändern nicht. Oft fängt die Kante, die von der Lampe weiter weg ist, Licht.',
  fracturesGoOn:
    'Risse schleifen sich oft nicht aus und gehen manchmal weiter auf. Ein langer Riss ist ein Grund, den Stein zu sägen, ihn dort zu brechen oder ihn zu lassen, wie er ist. *Im Bild vier Ecken.*',
  chips:
    'Bei einem Ausbruch ist an einer Kante ein Stück abgeschlagen: eine breite, flache Kerbe mit scharfem Rand und rauer Fläche. Das passiert, wenn die Trommel zu leer ist (allgemeine Erfahrung).',
  chipsGoOn: 'Flache Ausbrüche schleifen sich im Grobschliff aus. *Im Bild eine Raute.*',
  scratches:
    'Ein frischer Kratzer ist eine gerade, dünne Linie, die glänzt. Ein grobes Korn in einem feinen Gang macht viele davon. Gesucht wird nach ihnen in Feinschliff, Vorpolitur und Politur.',
  scratchesGoOn:
    'Kratzer auf mehreren Steinen heißen: In der Partie ist gröberes Korn. Wasch alles aus und geh zu dem Gang zurück, den die Liste nennt. *Im Bild eine Linie auf jeder Seite.* Blasse und unruhig gezeichnete Steine verstecken ihre Kratzer: Nimm die Lupe. [Was übersehen wird](/help/trust)',
};

export const pattern: HelpTexts['pattern'] = {
  intro:
    'Bänder, Flecken, Mineralkörner, Augen und Moos sind Farbe, keine Form. Sie können so dunkel sein wie ein Grübchen und so dünn wie ein Riss. Der Daumennagel gleitet darüber. Diese fünf Steine haben keinen einzigen Fehler:',
  moveLamp: 'Grübchen oder Zeichnung? Versetz die Lampe',
  how: `Trag die Lampe um ein Drittel um die Schale herum und mach ein zweites Foto. Drück auf *${tray.lampMoved.add}*. Zeichnung bleibt, wie sie ist. Die Schattierung einer Mulde wandert mit der Lampe.`,
};

export const finishes: HelpTexts['finishes'] = {
  intro:
    'Sieh dir das Bild der Lampe auf dem Stein an. Je glatter die Haut, desto kleiner, heller und schärfer ist es.',
  from: (gu) => `${gu} Glanzeinheiten und mehr`,
  below: (gu) => `unter ${gu} Glanzeinheiten`,
  between: (from, to) => `${from} bis ${to} Glanzeinheiten`,
  caption: (finish, range, looks) => `**${finish}**, ${range}. ${looks}`,
  outro:
    'Die Namen folgen veröffentlichten Glanzstufen für Anstriche (aus dem Gedächtnis). Harter, dichter Achat kann spiegelnd enden. Mancher Jaspis bleibt seidenmatt, was du auch tust: Das liegt am Stein, nicht an dir.',
};
