import type { Texts } from '../texts';

export const stone: Texts['stone'] = {
  previous: 'Voriger Stein',
  next: 'Nächster Stein',
  close: 'Schließen',
  enlarged: (name) => `${name}, vergrößert`,
  hideMarks: 'Markierungen ausblenden',
  showMarks: 'Markierungen einblenden',
  ofBatch: (checks) => `in seiner Partie, ${checks === 1 ? 'erste Kontrolle' : `${checks} Kontrollen`}.`,
  photoAlone: (verdict) => `Das Foto allein würde sagen: ${verdict}.`,
  decide: 'Was du mit ihm machst',
  flawsFound: 'Gefundene Fehler',
  noFlaws: 'Keine Grübchen, Risse, Ausbrüche oder Kratzer auf der Seite gefunden, die zur Kamera zeigt.',
  hideUncertain: 'Unsicheres ausblenden',
  showUncertain: (count) =>
    count === 1
      ? '1 weiterer, vielleicht Zeichnung oder Schatten'
      : `${count} weitere, vielleicht Zeichnung oder Schatten`,
  flaw: ({ title, across, long, wide, followsLamp, isUncertain }) =>
    [
      title,
      across && `${across} Durchmesser`,
      long && `${long} lang`,
      wide && `etwa ${wide} breit`,
      followsLamp === true && 'wandert mit dem Licht',
      followsLamp === false && 'wandert nicht mit dem Licht: wohl Zeichnung',
      isUncertain && 'unsicher',
    ]
      .filter((part) => part)
      .join(', '),
  smoothness: 'Glätte',
  smoothnessOf: (score) => `**${score}** von 100`,
  inspected: (surface) => `${surface} angesehen; was darüber hinausgeht, ist ungesehen, nicht fehlerfrei.`,
  pitClasses: (classes) => `Grübchen in den Klassen von ASTM G46: ${classes.join(', ')}.`,
  gloss: 'Glanz',
  glossEstimated: 'Glanz, geschätzt',
  noGloss: {
    'second-light': 'Nicht gelesen: Sein Glanzlicht liegt dort, wo er ein zweites Licht spiegelt.',
    moved: 'Nicht gelesen: Lampe oder Kamera stehen nicht mehr so, wie sie gemerkt wurden.',
    dull: 'Auf diesem Stein war kein Glanzlicht zu lesen: Er ist stumpf, oder seine Oberseite zeigt von Lampe und Kamera weg.',
  },
  glossAtMost: (gu) => `Er hat bei 60° höchstens etwa ${gu} Glanzeinheiten.`,
  finishAndLevel: (finish, level) => `**${finish}**, Glanzstufe ${level}`,
  glossReading: (gu, low, high, percent, ceiling) =>
    `${gu} Glanzeinheiten bei 60° (${low} bis ${high}): ${percent} % dessen, was dieses Material erreichen kann. Bei vollkommener Politur wären es ${ceiling}.`,
  glossOfCeiling: (gu, ceiling) => `${gu} von ${ceiling} Glanzeinheiten`,
  perfectPolish: 'vollkommene Politur',
  highlight: 'Sein Glanzlicht',
  chart: {
    title: 'Helligkeit des Glanzlichts von der Mitte nach außen, gemessen und angepasst',
    across: 'Lampenradien von der Mitte',
    caption:
      'Prozent dessen, was eine vollkommene Politur zurückwirft. **Punkte**: dein Foto. **Linie**: die Oberfläche, die am besten passt. Ein hoher schmaler Gipfel ist ein Spiegel, ein flacher breiter ist matt.',
  },
  noWaves: (longest) => `Keine Welligkeit zu sehen, in Wellen bis ${longest}.`,
  waves: (slope, low, high, wavelength) =>
    `Welligkeit, unabhängig vom Glanz: Neigungen von ${slope}° (${low} bis ${high}) in Wellen von etwa ${wavelength} Länge, wie bei Orangenhaut.`,
  dullPatches: (count, area) =>
    count === 1
      ? `Eine stumpfe Stelle von ${area} in der gespiegelten Lampe: ein Grübchen, eine Mattstelle oder ein ausgeschliffenes Korn.`
      : `${count} stumpfe Stellen in der gespiegelten Lampe, zusammen ${area}: Grübchen, Mattstellen oder ausgeschliffene Körner.`,
  furtherReading: (gu, low, high) => `${gu} Glanzeinheiten (${low} bis ${high})`,
  further: (readings, differs) => {
    const read = `Die Lampe spiegelt sich noch anderswo auf diesem Stein, dort mit ${readings.join(' und ')}`;
    return differs ? `Ungleichmäßig poliert. ${read}.` : `${read}: gleichmäßig, soweit es sich sagen lässt.`;
  },
  allFigures: 'Alle Zahlen zu seinem Glanz',
  figuresNote:
    'Was Messgeräte auf einer ebenen Fläche gleicher Oberfläche anzeigen würden, aus diesem Foto geschätzt.',
  figureNames: {
    gu20: 'Glanz bei 20°',
    gu60: 'Glanz bei 60°',
    gu85: 'Glanz bei 85°',
    imageClarity: 'Bildklarheit',
    distinctnessOfImage: 'Abbildungsschärfe',
    haze: 'Glanzschleier',
    contrast: 'Kontrast fürs Auge',
    distinctness: 'Schärfe fürs Auge',
  },
  figureWords: {
    gu20: 'Von oben gesehen. Unterscheidet den Spiegel vom Fast-Spiegel.',
    gu60: 'Die übliche Zahl: Nach ihr ist die Oberfläche benannt.',
    gu85: 'Flach gesehen, wo schon Seidenmattes glänzt.',
    distinctnessOfImage: 'Wie scharf der Rand einer gespiegelten Lampe ist.',
    haze: 'Milchiger Schein um die gespiegelte Lampe. Bei vollkommener Politur keiner.',
    hazeOfDull: 'Milchiger Schein um die gespiegelte Lampe. Sagt bei einem so stumpfen Stein nichts.',
    contrast: 'Wie sehr der Glanz hervortritt: auf einem dunklen Stein mehr als auf einem weißen.',
    contrastUnknown: 'Für diesen Stein nicht bekannt: Neben dem Glanzlicht ist zu wenig von ihm zu sehen.',
    distinctness: 'Wie scharf das Spiegelbild aussieht: 1 ist ein Spiegel.',
  },
  clarityOfDull: 'Wie klar Streifen von 2 mm im Spiegelbild bleiben. Nur Fast-Spiegel haben davon etwas.',
  clarity: (finer) =>
    `Wie klar Streifen von 2 mm im Spiegelbild bleiben. Feinere, von 1 mm bis ⅛ mm: ${finer.join('; ')} %.`,
  range: (low, high) => `${low} bis ${high}`,
};
