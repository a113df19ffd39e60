import type { Texts } from '../texts';

const stones = (count: number) => (count === 1 ? '1 Stein' : `${count} Steine`);
const photos = (count: number) => (count === 1 ? '1 Foto' : `${count} Fotos`);
const checks = (count: number) => (count === 1 ? '1 Kontrolle' : `${count} Kontrollen`);
const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tage`);

export const journal: Texts['journal'] = {
  compare: 'Steine vergleichen ›',
  empty:
    'Hier ist noch nichts aufgehoben. Miss eine Schale und tipp unter ihren Steinen auf „Aufheben“: Von der zweiten Kontrolle an siehst du, wie jeder Stein vorankommt.',
  nameless: 'Ohne Namen',
  batchLine: (stoneCount, checkCount, last, isOver) =>
    last === null
      ? `noch keine Kontrolle${isOver ? ', beendet' : ''}`
      : `${stones(stoneCount)}, ${checks(checkCount)}, zuletzt ${last.day} nach ${last.step}${isOver ? ', beendet' : ''}`,
  restored: (records) =>
    `Der Browser hatte ${records === 1 ? '1 Eintrag' : `${records} Einträge`} verloren: aus der Sicherheitskopie zurückgeholt. Sichere das Journal jetzt in eine Datei.`,
  showMore: (count) => `${count} weitere zeigen`,
  trayOn: (day) => `Schale am ${day}`,
  troubles: {
    refused:
      'Dieser Browser führt hier kein Journal: Das Speichern ist verboten, wie in einem privaten Fenster. Kontrollen werden gemessen, aber nicht aufgehoben.',
    unreadable:
      'Das Journal ließ sich gerade nicht lesen. Öffne die Seite noch einmal und heb die Kontrolle dann auf; verloren ist nichts.',
    outdated:
      'Ein anderes Fenster hat eine neuere Ausgabe dieses Journals geöffnet. Öffne diese Seite noch einmal und mach dann weiter; verloren ist nichts.',
    full: 'Das ließ sich nicht aufheben: Vielleicht ist der Speicher voll. Schaff etwas Platz und versuch es noch einmal; was schon aufgehoben war, bleibt, und das Journal lässt sich sichern.',
  },
  example: {
    note: 'Das ist ein Beispiel: Steine und Tage sind erfunden, die Messungen an ihren Bildern sind echt. Es hat ein eigenes Journal.',
    back: 'Zurück zu meinem Journal',
    look: 'Ein Beispieljahr ansehen',
    unreadable: 'Das Beispiel ließ sich nicht lesen. Öffne die Seite noch einmal.',
  },
  inAndOut: {
    title: 'Sichern und übernehmen',
    save: 'Journal sichern',
    takeIn: 'Journal übernehmen',
    table: 'Tabelle sichern',
    reminders: 'Erinnerungen sichern',
    saved: 'Gesichert: Einträge und Fotos in einer Datei. Ein anderes Gerät übernimmt sie hier.',
    remindersSaved: 'Gesichert: Dein Kalender übernimmt die Datei. Eine neuere ersetzt sie dort.',
    nothingDue: 'Nichts steht an: Keine laufende Partie hat schon eine Kontrolle oder einen Lauf.',
    allHere: 'Alles davon war schon hier.',
    brought: (fresh, records) =>
      `${fresh} von ${records} Einträgen ${fresh === 1 ? 'ist' : 'sind'} neu; was schon hier war, blieb unverändert.`,
  },
  stake: {
    title: 'In keiner gesicherten Datei',
    nothing: 'Alles liegt auch in einer gesicherten Datei.',
    little: (count, day) => `Noch in keiner gesicherten Datei: ${photos(count)}, seit ${day}.`,
    much: (count, day) =>
      `${photos(count)}, aufgehoben seit ${day}, ${count === 1 ? 'liegt' : 'liegen'} nur in diesem Browser. Sichere das Journal in eine Datei und leg sie auch auf ein anderes Gerät.`,
    most: (count, day) =>
      `${photos(count)}, aufgehoben seit ${day}, und alles daran Gemessene liegen nur in diesem Browser: Ein verlorenes Telefon oder ein geleerter Browser nähme sie mit. Sichere das Journal jetzt und leg die Datei auf ein anderes Gerät.`,
  },
  storage: {
    title: 'Speicher',
    where: 'Das Journal liegt in diesem Browser, auf diesem Gerät, und nirgends sonst.',
    room: (used, free) => `Es braucht etwa ${used}; Platz ist noch für ${free}.`,
    lasting: 'Der Browser hat versprochen, es nicht von selbst zu löschen.',
    passing: 'Der Browser löscht es vielleicht, wenn auf dem Gerät der Platz ausgeht.',
    ask: 'Browser bitten, es zu behalten',
    clearing: {
      title: 'Wann ein Browser ein Journal löscht',
      text: 'Wer Browserdaten löscht, löscht auch dieses Journal. Ein Browser, der nichts versprochen hat, löscht es vielleicht, wenn auf dem Gerät der Platz ausgeht, und mancher, wenn eine Seite eine Woche oder länger nicht geöffnet wurde und nicht auf dem Startbildschirm liegt. Ein verlorenes Telefon nimmt es mit. Eine gesicherte Datei bringt alles zurück: Journal übernehmen.',
    },
    noPictures: 'Dieser Browser zeichnet keine Bilder außerhalb des Bildschirms.',
  },
  machines: {
    title: 'Maschinen',
    machine: 'Maschine',
    notSaid: 'keine Angabe',
    unknown: 'eine Maschine',
    add: 'Maschine hinzufügen',
    name: 'Name',
    kind: 'Art',
    holds: (unit) => `Fasst, ${unit} (kann leer bleiben)`,
    addThis: 'Hinzufügen',
  },
  machineKinds: { rotary: 'Trommel', vibratory: 'Vibrationsschüssel' },
  machineKindsShort: { rotary: 'Trommel', vibratory: 'Vibration' },
  runs: {
    title: 'Läufe',
    days: (from, to) => `${from} bis ${to ?? 'jetzt'}`,
    washedOut: 'Heute ausgewaschen',
    start: 'Lauf beginnen',
    step: 'Gang',
    charge: 'Kornzugabe (eingetragen ist das Übliche)',
    endedUndo: 'Heute ausgewaschen: notiert.',
    startedUndo: 'Der Lauf ist notiert.',
    takeOut: 'Diesen Lauf streichen',
    takenOut: 'Der Lauf ist gestrichen.',
    started: 'Begonnen',
    add: 'Lauf eintragen',
  },
  batch: {
    unknown: 'Diese Partie ist nicht im Journal dieses Browsers. [Alle Partien](/journal)',
    started: (day, checkCount, isOver) =>
      `Begonnen ${day}, ${checkCount === 0 ? 'noch keine Kontrolle' : checks(checkCount)}${isOver ? ', beendet' : ''}.`,
    noCheck:
      'Noch keine Kontrolle. Fotografiere die Steine trocken in [der Schale](/) und behalte das Foto bei dieser Partie: Jede spätere Kontrolle wird dann daran gemessen.',
    takeOut: 'Diese Kontrolle streichen',
    takenOut: (day) => `Die Kontrolle vom ${day} ist gestrichen.`,
    outlook: 'Was wann so weit ist',
    stones: 'Steine',
    checks: 'Kontrollen',
    print: 'Partie drucken',
    about: 'Über diese Partie',
    name: 'Name der Partie',
    inCoarseSince: 'Im Grobschliff seit',
    isOver: 'Sie ist beendet: fertig oder aufgegeben',
    save: 'Speichern',
    makeLimit: 'Als Grenzwert nehmen',
    nameStones: (count) => `${stones(count)} benennen`,
    whichIsWhich: 'Welcher ist welcher',
  },
  readyIn: (ahead) =>
    ahead === 0 ? 'jetzt' : ahead < 14 ? days(Math.round(ahead)) : `${Math.round(ahead / 7)} Wochen`,
  checkLine: (day, step, stoneCount, sides) =>
    `**${day}**, nach ${step}, ${stones(stoneCount)}${sides > 1 ? `, ${sides} Seiten` : ''}`,
  stone: {
    unknown: 'Dieser Stein ist nicht im Journal dieses Browsers. [Alle Partien](/journal)',
    where: 'Wo dieser Stein liegt',
    next: 'Nächster Stein ›',
    favorite: 'Lieblingsstein',
    isFavorite: '★ Lieblingsstein',
    makeFavorite: '☆ Zum Liebling machen',
    checked: (checkCount, lastDay) =>
      checkCount === 1
        ? `Eine Kontrolle, am ${lastDay}.`
        : `${checks(checkCount)}, die letzte am ${lastDay}.`,
    now: 'Was jetzt zu tun ist',
    grindOn: (outlook) => `Wenn du trotzdem weiterschleifst: ${outlook}`,
    notFirm:
      'Das ist nicht sicher: Die Kontrollen zeigen vielleicht nicht alle dieselbe Seite. Fotografiere beide Seiten.',
    checks: 'Kontrollen',
    checkLine: (day, step, sides) =>
      `**${day}**, nach ${step}${sides > 1 ? `, ${sides} Seiten zusammen` : ''}`,
    onDay: (name, day) => `Stein ${name} am ${day}`,
    youDid: (action) => `du: ${action}`,
    decided: 'Deine Wahl',
    decidedSo: (advice) => `So hast du entschieden; der Rat war: ${advice}.`,
    notSaid: 'noch offen',
    about: 'Über diesen Stein',
    name: 'Name oder Nummer',
    material: 'Material',
    notSure: 'nicht sicher',
    source: 'Woher er kommt',
    save: 'Speichern',
  },
  measured: ({ length, pits, perArea, fractures, gloss }) => {
    const shine = gloss === null ? '' : `, ${gloss.gu} Glanzeinheiten (${gloss.low} bis ${gloss.high})`;
    return `${length} lang, ${pits} Grübchen ${perArea}, ${fractures} Risse${shine}`;
  },
  beforeAfter: {
    title: 'Vorher und nachher',
    onDay: (day) => `Der Stein am ${day}`,
    share: (percent) => `${percent} % des späteren Bildes`,
  },
  timeline: {
    title: 'Von Kontrolle zu Kontrolle',
    pits: 'Grübchen',
    fractures: 'Risse',
    length: 'Länge',
    gloss: 'Glanz',
    glossUnits: 'Glanzeinheiten',
    most: (limit) => `höchstens ${limit}`,
    least: (limit) => `mindestens ${limit}`,
    brokenLine: (limit) => `${limit} (gestrichelte Linie)`,
    said: (what, first, last, unit, limit) =>
      `${what}: anfangs ${first}, zuletzt ${last} ${unit}${limit === null ? '' : `; ${limit}`}`,
  },
  rigOf: (day) => (day === null ? 'Gemerkt an einem unbekannten Tag' : `Gemerkt am ${day}`),
};
