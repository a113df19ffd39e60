import type { HelpTexts } from '../texts';
import { page } from './page';

export const verdicts: HelpTexts['verdicts'] = {
  intro:
    'Jeder Stein ist mit der Linie seines Urteils umrandet und trägt dessen Zeichen. Farbe brauchst du dafür nicht.',
  meanings: {
    finished:
      'Geschafft. Sein Glanz ist nahe an dem, was sein Material hergibt, und kein Fehler liegt über deinen Grenzwerten.',
    advance:
      'Bereit für den nächsten Gang. Er ist glatt genug, und kein Fehler liegt über deinen Grenzwerten.',
    repeat: 'Derselbe Gang noch einmal. Die Begründung sagt, was fehlt.',
    'back-to-coarse':
      'Ein Fehler, den dieser Gang nicht herausholt. Er würde Korn in die feineren Gänge schleppen.',
    'set-aside':
      'Weiterschleifen hilft nicht: ein langer Riss, oder zu klein. Säg ihn, brich ihn oder lass ihn, wie er ist.',
    'look-closer': 'Das Foto kann es nicht sagen. Nimm den Stein in die Hand, und eine Lupe.',
  },
  lines: {
    finished: 'eine Doppellinie und ein Glanzlicht',
    advance: 'eine durchgezogene Linie und eine Treppe',
    repeat: 'Striche und eine Spirale',
    'back-to-coarse': 'Perlen und zwei raue Kanten',
    'set-aside': 'Strich und Punkt und ein Stein auf einem Brett',
    'look-closer': 'kurze Striche mit weitem Abstand und eine Lupe',
  },
  outro: `Im Zweifel kommt kein Stein weiter. Ein schlechter Stein verdirbt eine Partie; eine Woche mehr kostet eine Woche. Die Grenzwerte bestimmst du: unter *${page.setup}*.`,
};

export const numbers: HelpTexts['numbers'] = {
  ball: 'Die Kugel',
  aboutBall: (unit) =>
    `Die dunkle Glaskugel ist ein Spiegel, der bekannt ist. Ihre Breite gibt den Maßstab in ${unit}. Wo das Bild der Lampe liegt, sagt, wo die Lampe steht; wie groß es ist, wie groß die Lampe erscheint; sein Rand, wie scharf die Kamera ist; und seine Helligkeit, was ein vollkommener Spiegel zurückwürfe.`,
  highlight: 'Das Bild der Lampe auf einem Stein',
  aboutHighlight:
    'Auch ein Stein ist ein gewölbter Spiegel, nur rauer. Rauheit macht das Bild der Lampe flauer, breiter und weicher. Das Programm zeichnet solche Bilder für jede Rauheit und nimmt die, die zum Foto passen.',
  gloss: 'Glanzeinheiten',
  aboutGloss:
    'Aus der Rauheit folgt, was ein Glanzmessgerät auf einer ebenen Fläche derselben Güte bei 60° anzeigen würde (ISO 2813, ASTM D523). Vollkommen poliertes Glas, wie es die Norm nennt, ergibt 100. Es ist eine Schätzung und nennt sich auch so.',
  interval: 'Die Spanne',
  aboutInterval:
    'Kein Foto verrät die Zahl genau. *88 (83 bis 92)* heißt: am ehesten 88, und in neun von zehn Fällen zwischen 83 und 92. Überdecken sich zwei Spannen weit, dann nenn keinen der Steine glänzender.',
  ceiling: 'Der Höchstglanz',
  aboutCeiling: (agate, fluorite, corundum) =>
    `Jedes Mineral wirft nur so viel Licht zurück, wie gut es auch poliert ist. Das ist sein Höchstglanz. Achat endet bei etwa ${agate}, Fluorit bei ${fluorite}, Korund bei ${corundum}. Sag dem Programm darum, woraus der Stein ist.`,
  smoothness: 'Die Glätte',
  aboutSmoothness: (inInches) => {
    const density = inInches
      ? 'je mehr Zoll Fehler auf jedem Quadratzoll, desto mehr'
      : 'je mehr Millimeter Fehler auf jedem Quadratzentimeter, desto mehr';
    return `Sie beginnt bei 100. Grübchen nehmen bis zu 50, Risse bis zu 30, Ausbrüche bis zu 12, Kratzer bis zu 8: ${density}. Was jeder Fehler genommen hat, steht dabei.`;
  },
  confidence: 'Die Sicherheit',
  aboutConfidence:
    'Jedes Zeichen hat eine Sicherheit. Auf den Schalen, an denen sie eingestellt wurde, war 0,8 in acht von zehn Fällen richtig. Ab 0,5 zählt ein Fehler. Zwischen 0,125 und 0,5 ist er zweifelhaft; würden zweifelhafte Fehler den Ausschlag geben, sollst du genauer hinsehen.',
};
