import type { Texts } from '../texts';

export const rigGuide: Texts['rigGuide'] = {
  title: 'Lampe und Kamera einrichten',
  lead: 'Einmal, in fünf Minuten. Danach ist jede Kontrolle mit der letzten vergleichbar.',
  setupLink: 'Schritt für Schritt',
  steps: {
    place: 'Lampe, Kamera und Schale aufstellen',
    ball: 'Die Kugel zwischen ein paar trockene Steine legen',
    look: 'Durch die Kamera schauen',
    remember: 'Merken',
  },
  placeHow:
    'Eine kleine, helle Lampe, 25 bis 45° von der Seite. Die Kamera senkrecht darüber, auf einem Stativ oder Bücherstapel. Eine einfarbige, matte Schale. Alle anderen Lichter aus.',
  placeMore: 'Mehr über Lampe, Schale und Kugel',
  lookHow: 'Rücke Lampe und Kamera, bis jede Zeile unter dem Livebild abgehakt ist. Dann nimm das Foto auf.',
  lookFile: 'Ist hier keine Kamera, wähle ein Foto, das mit diesem Aufbau entstanden ist.',
  done: 'erledigt',
  looking: 'Nimm erst ein Foto auf oder wähle eines; hier wird es gemessen.',
  mark: 'Markiere jetzt, wo Lampe, Kamera und Schale stehen: Klebeband auf dem Tisch genügt. Hat sich etwas bewegt, erfährst du es.',
  nextBatch: 'Eine Partie beginnen',
  nextTray: 'Eine Schale prüfen',
  facts: 'Was die Kamera vom Aufbau sieht',
  ballFound: (ball, pixels) => `Kugel gefunden: ${ball} sind ${pixels} Pixel.`,
  ballMissing: 'Noch ist keine Kugel zu sehen: Lege sie ganz im Bild zwischen die Steine.',
  focusGood: 'Scharf, soweit das Livebild es zeigt.',
  focusBad: 'Unscharf: Halte still und stelle auf die Steine scharf.',
  notYet: 'Erst bekannt, wenn die Kugel zu sehen ist.',
};
