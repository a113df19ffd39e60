import type { HelpTexts } from '../texts';

export const trust: HelpTexts['trust'] = {
  intro:
    '**Sieh dir das Bild mit den Zeichen an, bevor du danach handelst, und trau deinem Daumennagel mehr als dem Programm.** Fast alle Zahlen hier stammen von gerenderten Schalen, bei denen die Wahrheit bekannt ist. Echte Fotos sind schwieriger.',
  missed: 'Was es nicht schafft',
  reached: 'Was es gut kann',
  outro:
    'Es sieht nur, was zur Kamera zeigt. Dreh die Steine um und fotografiere sie noch einmal: Beide Seiten werden zusammengezählt. Es hilft beim Sortieren; es ist kein Edelsteingutachten und sagt nichts über die Sicherheit.',
};

export const missed: HelpTexts['missed'] = {
  pits: 'Von zehn Grübchen zeigt ein einzelnes Foto nur vier.',
  smallPits: (small, large) =>
    `Von Grübchen unter ${small} zeigt es eines von acht, von denen über ${large} jedes zweite.`,
  chips: 'Von zehn Ausbrüchen zeigt es sechs.',
  scratches: 'Von zehn Kratzern, die ein Auge sehen könnte, zeigt es vier.',
  advanced: 'Von 142 Steinen über den Grenzwerten hätte es fünf weitergeschickt.',
  sentBack: 'Von 19 guten Steinen hat es zwei zurückgeschickt.',
  noNumber: 'Einer von zwölf Steinen bekommt keine Zahl für den Glanz; die meisten davon sind matt.',
  roughness:
    'Auf veränderten Fotos (nachgeschärft, weichgezeichnet) las es zwei fast spiegelnde Steine doppelt so rau, wie sie sind, und warnte nicht.',
  tileHoles: 'Auf echten Fotos geschliffener Fliesen fand es die Hälfte der Löcher.',
  soundTiles: 'Auf zehn einwandfreien Fliesen meldete es drei Löcher, die keine sind.',
  forecast:
    'Wann ein Stein fertig ist, sagt es in der Hälfte der Fälle um mehr als eine Kontrolle falsch voraus.',
};

export const reached: HelpTexts['reached'] = {
  pitClaims: 'Was es ein Grübchen nennt, ist in mehr als neun von zehn Fällen eines.',
  lampMoved:
    'Mit einem zweiten Foto bei versetzter Lampe findet es zwei von drei Grübchen; von sieben Meldungen ist dann eine falsch.',
  fractures: 'Es findet mehr als neun von zehn Rissen und erfindet kaum welche.',
  gloss:
    'Ist das Material bekannt, stimmt der Glanz in der Hälfte der Fälle auf 2,1 Einheiten, in neun von zehn auf 8.',
  intervals: 'In seinen Spannen für den Glanz liegt die Wahrheit bei 95 von 100 Steinen.',
  identity:
    'Es erkennt einen Stein von Kontrolle zu Kontrolle wieder und fragt, wo es nicht sicher ist: Von 150 Malen, die es nicht gefragt hat, irrte es einmal.',
  willNotClear:
    'Sagt es, dass ein Stein nicht mehr sauber wird, stimmt das in 96 von 100 Fällen, wenn sich Steine so schleifen, wie wir denken.',
};
