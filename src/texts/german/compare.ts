import type { Texts } from '../texts';

const needed: Texts['compare']['needed'] = {
  gloss: 'eine Kontrolle nach der Politur, mit einem Glanzlicht, das sich im Foto messen ließ',
  coarse: 'Kontrollen im Grobschliff und eine nach dem nächsten Gang, oder deine Angabe, dass er weiterging',
  size: 'zwei Kontrollen desselben Steins',
  finished: 'deine Angabe, was aus ihm wurde: fertig oder ausgesondert',
};

const stones = (count: number) => (count === 1 ? '1 Stein' : `${count} Steine`);

export const compare: Texts['compare'] = {
  title: 'Vergleich',
  chooseWhat: 'Verglichen wird',
  chooseBy: 'bei Steinen nach',
  by: { material: 'Material', source: 'Herkunft', batch: 'Partie', recipe: 'Gänge' },
  what: {
    gloss: 'Glanz',
    // A soft hyphen: the word is wider than a quarter of a phone.
    coarse: 'Wochen im Grob\u00adschliff',
    size: 'Abtrag',
    finished: 'Anteil fertig',
  },
  axis: {
    gloss: 'Glanz nach der Politur, Prozent',
    coarse: 'Wochen im Grobschliff',
    size: 'Längenverlust, Prozent',
    finished: 'Fertige Steine, Prozent',
  },
  ceiling: 'Höchstglanz',
  reading: {
    gloss:
      'Jeder Kiesel ist ein Stein bei seiner letzten Messung nach der Politur. Der Höchstglanz ist das, was sein Material bei vollkommener Politur erreichen würde. Die Hälfte der Steine liegt auf dem farbigen Band, der lange Strich zeigt den Median.',
    coarse:
      'Jeder Kiesel ist ein Stein, vom Beginn seiner Partie bis zu seiner letzten Kontrolle im Grobschliff. Hohl mit Schweif: noch darin, es dauert also mindestens so lange. Kreuz: dort ausgesondert. Der Strich zeigt, wann die Hälfte heraus war, das Band reicht von einem Viertel bis drei Viertel und bleibt offen, wo noch zu wenige heraus sind.',
    size: 'Jeder Kiesel ist ein Stein, von seiner ersten Kontrolle bis zur letzten. Ein Stein, der auf einer anderen Seite liegt, kann etwas länger aussehen als vorher. Die Hälfte der Steine liegt auf dem farbigen Band, der lange Strich zeigt den Median.',
    finished:
      'Die Steine einer Gruppe füllen die ganze Breite. Kiesel auf dem dicken Faden: fertig; Kreuze auf dem dünnen: ausgesondert. Wo sie sich treffen, liegt der Anteil der fertigen, und das farbige Band zeigt, wie groß er in Wahrheit sein kann. Steine, die noch unterwegs sind, zählen nicht mit.',
  },
  needed,
  nothingYet:
    'Noch lässt sich nichts vergleichen. Heb jede Kontrolle einer Partie im Journal auf, sag, welcher Stein welcher ist, und gib den Steinen Material und Herkunft; von da an ergänzt jede Kontrolle den Vergleich.',
  noneTells: (what) => `Bisher verrät das kein aufgehobener Stein. Dafür braucht es ${needed[what]}.`,
  fiveOfAKind: 'Erst ab fünf Steinen einer Art wird etwas über sie behauptet.',
  fiveOfAGroup: 'Erst ab fünf Steinen wird etwas über eine Gruppe behauptet.',
  noGroupYet:
    'Noch hat keine Gruppe fünf Steine, die das verraten, darum wird nichts verglichen; die Punkte zeigen, was da ist.',
  fewTitle: 'Noch zu wenige Steine für einen Vergleich',
  showMore: (more, all) => `${more} weitere von ${all} zeigen`,
  withoutFigure: (count) =>
    count === 1
      ? 'Von 1 Stein gibt es diese Angabe noch nicht.'
      : `Von ${count} Steinen gibt es diese Angabe noch nicht.`,
  asTable: 'Dasselbe als Tabelle',
  tableCaption: (axis) => `${axis}; das Beste zuerst.`,
  favorites: 'Lieblingssteine',
  showFewer: 'Weniger zeigen',
  showAllFavorites: (count) => `Alle ${count} Lieblingssteine zeigen`,
  ofBatch: (batch) => `aus ${batch}`,
  ofUnnamedBatch: 'aus einer Partie ohne Namen',
  oneBatch: (group) => `Alle aus einer Partie: Was ${group} abhebt, kann an der Partie liegen.`,

  range: (low, high) => `${low} bis ${high}`,
  weeks: (count) => (count === '1' ? '1 Woche' : `${count} Wochen`),
  count: stones,
  countOnly: (count) => `nur ${stones(count)}`,
  countOfBatches: (count, batches) => `${stones(count)} aus ${batches} Partien`,
  stillInCoarse: (count) => `${count} noch im Grobschliff`,
  stillUnderWay: (count) => `${count} noch unterwegs`,
  setAside: (count) => `${count} ausgesondert`,

  batchSince: (day) => `Partie vom ${day}`,
  unsaid: {
    material: 'Material nicht angegeben',
    source: 'Herkunft nicht angegeben',
    batch: 'Partie ohne Namen',
    recipe: 'Kein Gang notiert',
  },
  unsaidWithin: {
    material: '„Material nicht angegeben“',
    source: '„Herkunft nicht angegeben“',
    batch: '„Partie ohne Namen“',
    recipe: '„Kein Gang notiert“',
  },
  within: (name) => name,
  subject: {
    material: (name) => name,
    source: (name) => `Steine aus ${name}`,
    batch: (name) => name,
    recipe: (steps) => `Steine nach ${steps}`,
  },
  subjectUnsaid: {
    material: 'Steine ohne Materialangabe',
    source: 'Steine ohne Herkunftsangabe',
    batch: 'Partie ohne Namen',
    recipe: 'Steine ohne notierten Gang',
  },

  sentence: (subject, words) => `${subject}: ${words}.`,
  tooFew: (subject, count) => `${subject}: nur ${stones(count)}, darum wird nichts behauptet.`,
  reached: (subject, _isOne, share, count, half) =>
    `${subject}: ${share} des Höchstglanzes erreicht (Median von ${count}; mittlere Hälfte ${half}).`,
  lost: (subject, _isOne, share, count, half) =>
    `${subject}: ${share} der Länge verloren (Median von ${count}; mittlere Hälfte ${half}).`,
  gloss: (share, half) => `${share} des Höchstglanzes; mittlere Hälfte ${half}`,
  size: (ofLength, ofArea, half) =>
    `${ofLength} der Länge verloren, ${ofArea} der Fläche; mittlere Hälfte ${half} der Länge`,
  finished: (known, all, share, likely) =>
    `${known} von ${all} fertig, ${share}; der wahre Anteil liegt wohl bei ${likely}`,
  halfHadLeft: (weeks) => `die Hälfte war nach ${weeks} aus dem Grobschliff heraus`,
  quarterAfter: (count) => `ein Viertel nach ${count}`,
  threeQuartersAfter: (count) => `drei Viertel nach ${count}`,
  fewHadLeft: (known, all) => `weniger als die Hälfte ist aus dem Grobschliff heraus, ${known} von ${all}`,
  eachOfCeiling: (shares) => `${shares} des Höchstglanzes`,
  eachOfLength: (shares) => `${shares} der Länge verloren`,
  leftCoarse: (count) => `${count} aus dem Grobschliff heraus`,
  finishedCount: (count) => `${count} fertig`,
  likelyShare: (range) => `Der wahre Anteil liegt wohl bei ${range} (in 19 von 20 Fällen).`,
  likelyMedian: (range) => `Der wahre Median liegt wohl bei ${range} (in 19 von 20 Fällen).`,
  likelyWeeks: (low, high) => `Der wahre Median liegt wohl zwischen ${low} und ${high}.`,
  likelyWeeksOpen: (low) =>
    `Der wahre Median liegt wohl bei ${low} oder mehr; wie viel mehr, zeigen die Steine, die noch im Grobschliff sind.`,

  better: {
    gloss: (names) => `Mehr Glanz als ${names}.`,
    coarse: (names) => `Schneller heraus als ${names}.`,
    size: (names) => `Weniger Verlust als ${names}.`,
    finished: (names) => `Öfter fertig als ${names}.`,
  },
  worse: {
    gloss: (names) => `Weniger Glanz als ${names}.`,
    coarse: (names) => `Später heraus als ${names}.`,
    size: (names) => `Mehr Verlust als ${names}.`,
    finished: (names) => `Seltener fertig als ${names}.`,
  },
  undecided: (names) => `Noch kein Unterschied zu erkennen gegenüber ${names}.`,
  others: (count) => `${count} weitere`,
  andLast: (before, last, hasCommas) => `${before}${hasCommas ? '; sowie' : ' und'} ${last}`,

  stoneGloss: (share, range, units) => `${share} des Höchstglanzes (${range}), ${units} Glanzeinheiten`,
  stoneInCoarse: (weeks) => `${weeks} im Grobschliff`,
  stoneSoFar: (weeks) => `bisher ${weeks}, noch im Grobschliff`,
  stoneSetAside: (weeks) => `nach ${weeks} im Grobschliff ausgesondert`,
  stoneSize: (first, last, ofLength, ofArea) =>
    `${first}, jetzt ${last}: ${ofLength} der Länge und ${ofArea} der Fläche verloren`,
  stoneEnd: { known: 'fertig', waiting: 'unterwegs', 'given up': 'ausgesondert' },
  favoriteGloss: (share, finish) => `${share} seines Höchstglanzes, ${finish}`,
  favoriteUnread: 'Glanz noch nicht gemessen',
  favoriteMaterialUnsaid: 'Material nicht angegeben',
  favoriteLong: (length) => `${length} lang`,
};
