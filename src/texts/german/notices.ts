import type { Texts } from '../texts';

export const notices: Texts['notices'] = {
  refusals: {
    'empty-file': 'Die Datei ist leer: Nimm das Foto noch einmal auf oder wähle eine andere Datei.',
    'not-an-image':
      'Das ist kein Foto, das dieses Programm lesen kann: Wähle eine Datei im Format JPEG, PNG, WebP, AVIF oder HEIC.',
    truncated:
      'Das Foto ist abgeschnitten: Kopiere es noch einmal von der Kamera, oder nimm es noch einmal auf.',
    'too-small': 'Das Foto ist zu klein zum Messen: Die kürzere Seite muss mindestens 200 Pixel lang sein.',
    'too-large':
      'Das Foto ist größer, als dieses Programm fassen kann: Speichere es mit höchstens 50 Megapixeln.',
    'no-stone':
      'Es wurde kein Stein gefunden: Leg die Steine einzeln auf eine einfarbige Schale, und lass die Schale das Bild füllen.',
    'no-ball':
      'Es wurde keine Referenzkugel gefunden: Leg die dunkle Glaskugel in die Schale, zeig auf sie, oder nimm einen gemerkten Aufbau.',
    'out-of-focus':
      'Das Foto ist unscharf: Halte die Kamera ruhig, stell auf die Steine scharf und nimm es noch einmal auf.',
    'too-dark':
      'Das Foto ist zu dunkel zum Messen: Belichte länger, oder rück die Lampe näher, und nimm es noch einmal auf.',
    'low-resolution':
      'Das Foto hat zu wenige Pixel, um die Kugel zu finden: Geh näher heran, oder speichere es größer, mit mindestens vier Pixeln je Millimeter.',
    'exposures-differ-in-size':
      'Die Aufnahmen sind nicht gleich groß: Nimm sie mit derselben Kamera auf, gleich gehalten, und beschneide sie nicht.',
    'exposures-differ-in-scene':
      'Die Aufnahmen zeigen nicht dieselbe Szene: Lass Kamera, Lampe und Steine, wie sie sind, ändere die Belichtung um eine bis drei Blenden und sonst nichts.',
  },
  warnings: {
    'ball-clipped':
      'Das Glanzlicht auf der Kugel ist überbelichtet, deshalb ist der Glanz weniger sicher: Nimm das Foto dunkler auf, oder füge eine dunklere Aufnahme hinzu.',
    'low-resolution':
      'Wenige Pixel je Millimeter: Kleine Grübchen können verborgen bleiben. Geh näher heran, oder fotografiere weniger Steine.',
    'stone-cut-off':
      'Ein Stein berührt den Rand des Fotos und ist nur zum Teil zu sehen: Rück ihn ins Bild, oder geh weiter weg.',
    'lamp-too-large':
      'Die Lampe wirkt zu groß, um glänzend von spiegelnd zu unterscheiden: Halbiere sie, oder stell sie doppelt so weit weg.',
    blurred:
      'Das Foto ist leicht unscharf, deshalb sind fast spiegelnde Oberflächen weniger sicher: Halte die Kamera ruhig und stell auf die Steine scharf.',
    compressed:
      'Das Foto wurde stark komprimiert, das macht die Ränder der Glanzlichter weich; fast spiegelnde Oberflächen sind deshalb weniger sicher: Nimm die Datei der Kamera selbst, nicht eine, die per Messenger kam.',
    'too-dark': 'Das Foto ist so dunkel, dass matte Steine ihren Glanz nicht zeigen: Belichte länger.',
    clipped: 'Teile des Fotos sind überbelichtet, Glanz und Fehler sind dort verloren: Nimm es dunkler auf.',
    'second-light':
      'Die Kugel spiegelt ein zweites Licht, dessen Glitzern mit dem der Lampe verwechselt werden kann: Deck das Fenster ab, oder schalte dieses Licht aus.',
    'lamp-partly':
      'Die Kugel spiegelt nur einen Teil der Lampe, deshalb stimmt kein Glanz: Räum weg, was dazwischen steht, oder nimm eine runde oder eckige Lampe.',
    'wet-stones':
      'Diese Steine sehen nass aus, und Wasser täuscht eine Politur vor: Trockne sie und die Schale, und nimm das Foto noch einmal auf.',
    'ball-unlit':
      'Die Schale ist heller, als die Lampe in der Kugel sie machen kann: Die Kugel ist vielleicht nur ein Bild, oder ein anderes Licht ist stärker. Leg die Glaskugel selbst unter die Lampe, und nimm das Foto noch einmal auf.',
    'unlike-stones':
      'Vieles auf dieser Schale sieht nicht aus wie Steine im Licht der Lampe: zu flach, zu rund oder zu zerklüftet, wie Münzen, Murmeln oder Bilder. Sieh nach, was dort liegt, und dass nichts die Schatten wegnimmt.',
    'lamp-moved':
      'Die Lampe steht nicht, wo sie stand, als Lampe und Kamera gemerkt wurden: Stell sie zurück, oder leg die Kugel in die Schale und merke beides neu.',
    'camera-moved':
      'Die Kamera oder die Größe ihrer Fotos ist nicht wie gemerkt, ohne Kugel stimmen deshalb die Größen nicht: Leg sie in die Schale, und merke Lampe und Kamera neu.',
    'focus-lost':
      'Das Foto ist unschärfer als das gemerkte: Stell auf die Steine scharf, und nimm es noch einmal auf.',
    'exposure-changed':
      'Die Belichtung ist nicht die gemerkte: Der Glanz wurde nach dem Licht auf der Schale berichtigt, was nur für dieselbe Schale gilt. Halte die Belichtung fest, oder leg die Kugel in die Schale.',
    'tray-changed':
      'Das Licht auf der leeren Schale ist nicht wie gemerkt, deshalb ist der Glanz weniger sicher: Stell Lampe und Schale zurück, wie sie waren, oder leg die Kugel in die Schale.',
    'moved-other-tray':
      'Das zweite Foto zeigt diese Steine nicht in derselben Lage und wurde deshalb nicht benutzt: Bewege nur die Lampe, oder dreh die ganze Schale, und nimm es noch einmal auf.',
    'moved-same-lamp':
      'Im zweiten Foto scheint die Lampe von derselben Stelle wie zuvor, deshalb wurde es nicht benutzt: Trag die Lampe etwa ein Drittel um die Schale herum, und nimm es noch einmal auf.',
    'moved-no-ball':
      'Das zweite Foto zeigt keine Referenzkugel, die verrät, wo die Lampe steht, und wurde deshalb nicht benutzt: Lass die Kugel in der Schale, und nimm es noch einmal auf.',
    'rig-unchecked':
      'Lampe und Kamera wurden auf eine frühere Art gemerkt, die sich nicht prüfen lässt, deshalb ist der Glanz weniger sicher: Merke sie neu, von einem Foto mit der Kugel.',
  },
  refusalsInInches: {
    'low-resolution':
      'Das Foto hat zu wenige Pixel, um die Kugel zu finden: Geh näher heran, oder speichere es größer, mit mindestens hundert Pixeln je Zoll.',
  },
  warningsInInches: {
    'low-resolution':
      'Wenige Pixel je Zoll: Kleine Grübchen können verborgen bleiben. Geh näher heran, oder fotografiere weniger Steine.',
  },
  stopped: 'Angehalten: Dieses Foto wurde nicht gemessen.',
  failed: (detail) =>
    `Das Messen dieses Fotos ist misslungen. Versuch es noch einmal, oder nimm ein anderes. (${detail})`,
  brokeOff: (cause) =>
    `Die Messung brach ab${cause === '' ? '' : ` (${cause})`}: Versuch es noch einmal mit dem Foto.`,
  answerUnread: 'eine Antwort war nicht zu lesen',
  analysisFailed: (cause) => `Die Messung ist misslungen: ${cause}`,
};
