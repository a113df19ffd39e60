import type { HelpTexts } from '../texts';

export const alts: HelpTexts['alts'] = {
  pit: 'Ein Grübchen in einem grünen Stein: Die obere Seite, zur Lampe hin, ist dunkel, die untere hell und stumpf. Ein dunkelbrauner Fleck daneben ist eben.',
  pits: 'Ein blasser Quarz mit fünf Grübchen, jedes in einem Ring. Drei schwarze Flecken darauf haben keinen Ring.',
  fracture: 'Eine dunkle, leicht krumme Linie zieht über einen grünen Stein, eine ihrer Kanten ist hell.',
  'fracture-long':
    'Zwei lange, gewundene Risse auf einem Stein aus rosa und grünen Körnern, jeder zwischen vier Ecken.',
  chip: 'Eine breite, flache Kerbe an der Schulter eines weißen Steins, mit klarem Rand und rauer Fläche.',
  'chip-red':
    'Ein roter Stein mit zwei blassen, ovalen Kerben nahe seinem oberen Rand und ein paar dunklen Flecken.',
  scratches:
    'Ein schwarzer Stein mit einem hellen Spiegelbild der Lampe und zwei geraden, dünnen, blassen Kratzern, jeder zwischen zwei Linien.',
  'scratches-agate':
    'Ein brauner, gebänderter Achat mit kurzen, geraden, dünnen Linien zwischen den Bändern, die hellste neben einem blassen Band.',
  specks: 'Ein matter roter Stein mit mehreren kleinen dunklen Flecken, alle eben.',
  grains: 'Ein Stein aus weißen, grauen und schwarzen kantigen Körnern.',
  bands: 'Ein brauner Achat mit vielen welligen hellen und dunklen Bändern.',
  orbs: 'Ein grüner Stein mit blassen runden Flecken, jeder mit Ring und Kern.',
  moss: 'Ein weißer Stein mit grünen, zerrissenen, wolkigen Stellen.',
  'lamp-here':
    'Ein Grübchen und ein dunkler Fleck auf einem weißen Stein. Die Lampe steht rechts unten, und auf dieser Seite ist das Grübchen dunkel.',
  'lamp-there':
    'Dasselbe Grübchen und derselbe Fleck mit der Lampe oben: Jetzt ist die obere Seite des Grübchens dunkel, der Fleck ist wie vorher.',
  matte: 'Ein roter Stein ohne jedes Spiegelbild, nur mit einer weichen Helligkeit, wo das Licht hinfällt.',
  satin: 'Ein roter Stein mit zwei breiten, weichen, blassen Lichtflecken.',
  'semi-gloss':
    'Ein roter Stein mit einem kleinen hellen Spiegelbild, das ringsum in einen Schleier ausläuft.',
  gloss: 'Ein roter Stein mit einem kleinen, hellen, fast scharfen Spiegelbild der Lampe.',
  mirror: 'Ein grüner Stein mit einem kleinen, weißen, scharf begrenzten Spiegelbild der Lampe.',
  ball: 'Eine schwarze Glaskugel mit einem kleinen, runden, weißen Spiegelbild der Lampe.',
};

export const captions: HelpTexts['captions'] = {
  pit: (across) =>
    `Ein Grübchen, ${across} breit. Der braune Punkt am linken Rand ist ein Fleck: keine dunkle Seite, keine helle.`,
  pits: 'Fünf Grübchen, eingezeichnet. Die drei schwarzen Flecken sind nur Farbe.',
  fracture: (length) => `Ein Riss, ${length} lang.`,
  'fracture-long':
    'Zwei Risse, eingezeichnet. Zusammen liegen sie weit über dem üblichen Grenzwert: aussondern.',
  chip: (across) => `Ein Ausbruch an der Schulter, ${across} breit.`,
  'chip-red': 'Zwei Ausbrüche nahe am Rand. Die dunklen Punkte sind Flecken.',
  scratches: (width) =>
    `Zwei Kratzer von grobem Korn, ${width ?? 'einen Zehntelmillimeter'} breit, eingezeichnet.`,
  'scratches-agate':
    'Sechs kurze Kratzer. Zwischen den Bändern sieht man sie kaum; der hellste glänzt neben dem blassen Band.',
  specks: 'Flecken. Gleichmäßig dunkel, ohne helle Seite.',
  grains: 'Mineralkörner. Harte Kanten, eines wie das andere.',
  bands: 'Bänder. Sie laufen weiter und halten Abstand.',
  orbs: 'Augen. Ringe in Ringen.',
  moss: 'Moos. Zerrissene Wolken aus Farbe.',
  'lamp-here': 'Die Lampe steht rechts unten: Dort ist das Grübchen dunkel.',
  'lamp-there': 'Die Lampe steht oben: Jetzt ist das Grübchen oben dunkel. Der Fleck ist wie vorher.',
  matte: 'Kein Bild der Lampe. Das Licht läuft weich aus. So kommt ein Stein aus grobem Korn.',
  satin: 'Ein breiter, weicher Schein, wo die Lampe sein müsste.',
  'semi-gloss': 'Die Lampe ist da, mit einem Schleier ringsum.',
  gloss: 'Die Lampe ist klar, ihr Rand noch etwas weich.',
  mirror: 'Die Lampe steht mit scharfem Rand im Stein.',
  ball: 'Die Referenzkugel. Ihr weißer Punkt ist die Lampe.',
};
