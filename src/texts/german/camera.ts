import type { Holdable } from '../../camera/cameraHold';
import { listed } from '../listed';
import type { Texts } from '../texts';

const HELD: Readonly<Record<Holdable, string>> = {
  exposure: 'Belichtung',
  focus: 'Schärfe',
  'white balance': 'Weißabgleich',
};
const NOT_HELD: Readonly<Record<Holdable, string>> = {
  exposure: 'die Belichtung',
  focus: 'die Schärfe',
  'white balance': 'den Weißabgleich',
};
const inRow = (what: readonly Holdable[], names: typeof HELD) =>
  listed(
    what.map((one) => names[one]),
    'und',
  );

export const camera: Texts['camera'] = {
  title: 'Kamera',
  close: 'Schließen',
  live: 'Laufendes Bild der Schale',
  stones: (count) => (count === 1 ? '1 Stein' : `${count} Steine`),

  troubles: {
    denied:
      'Diese Seite darf die Kamera nicht benutzen: Erlaube es in den Einstellungen des Browsers für diese Seite und versuch es noch einmal.',
    'no-camera': 'An diesem Gerät ist keine Kamera zu finden.',
    'in-use': 'Ein anderes Programm benutzt die Kamera: Schließ es und versuch es noch einmal.',
    'not-offered': 'Dieser Browser gibt Seiten keine Kamera.',
    lost: 'Die Kamera ist stehen geblieben: Sie wurde abgezogen, oder ein anderes Programm hat sie übernommen.',
    broken: 'Die Kamera ließ sich nicht starten.',
  },

  advice: {
    looking: 'Kugel und Steine werden gesucht …',
    unchecked: 'Das Bild lässt sich gerade nicht prüfen: Mach das Foto trotzdem.',
    'too-dark': 'Zu dunkel: Rück die Lampe näher heran.',
    'out-of-focus': 'Halt still: unscharf.',
    'no-ball': 'Die Kugel ist nicht zu sehen: Leg sie zwischen die Steine, ganz im Bild.',
    'too-bright': 'Zu hell: Das Bild der Lampe in der Kugel ist überstrahlt.',
    'picture-too-bright': 'Zu hell: Teile des Bildes sind überstrahlt.',
    'too-far': 'Näher heran: Der gestrichelte Ring muss größer sein und auf der Kugel liegen.',
    'second-light': 'Die Kugel spiegelt ein zweites Licht: Mach es aus oder verhäng das Fenster.',
    'lamp-partly': 'Etwas verdeckt die Lampe zum Teil vor der Kugel: Räum es weg.',
    outlining: 'Halt still: Die Steine werden umrissen.',
    'no-stone': 'Kein Stein zu sehen: Leg die Steine einzeln auf die schlichte Schale.',
    'stone-cut-off': 'Ein Stein ist abgeschnitten: Rück ihn herein oder geh etwas zurück.',
    ready: 'Gut so: Mach das Foto.',
  },
  pressDarker: 'Drück auf „Dunkler“.',
  setDarker: 'Nimm die Kamera des Geräts und stell sie dunkler.',
  starting: 'Kamera wird gestartet …',
  holdStill: 'Halt still: Von mehreren Fotos bleibt das schärfste.',
  failed: 'Das Foto ist nicht gelungen: Versuch es noch einmal.',

  checks: 'Prüfungen des Bildes',
  checkNames: { ball: 'Kugel', exposure: 'Licht', focus: 'Schärfe', scale: 'Größe' },
  checkStates: { good: 'gut', bad: 'noch nicht gut', unknown: 'noch nicht bekannt' },

  lock: 'Festhalten',
  unlock: 'Lösen',
  darker: 'Dunkler',
  lighter: 'Heller',
  notLocked: 'Noch nichts festgehalten.',
  locked: (what) => `Festgehalten: ${inRow(what, HELD)}.`,
  cannotLock: (what) => `Diese Kamera kann ${inRow(what, NOT_HELD)} nicht festhalten.`,

  take: 'Foto aufnehmen',
  taking: (number, of) => `Foto ${number} von ${of} …`,
  again: 'Noch einmal versuchen',
  ownCamera: 'Kamera des Geräts nehmen',

  rigDrawing: {
    alt: 'Von der Seite: die Kamera senkrecht über der Schale, die Lampe 25 bis 45 Grad seitlich davon, die dunkle Kugel zwischen den Steinen.',
    camera: 'Kamera',
    lamp: 'Lampe',
    stones: 'Kugel zwischen trockenen Steinen',
  },
};
