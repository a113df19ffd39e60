/** What is to be seen on each picture of the help page, for those who cannot see it. */
export const alts = {
  pit: 'A pit in a green stone: its upper side, toward the lamp, is dark, its lower side bright and dull. A dark brown speck beside it is flat.',
  pits: 'A pale quartz with five pits, each in a ring. Three black specks on it have no ring.',
  fracture: 'A dark, slightly crooked line runs across a green stone, one lip of it lit.',
  'fracture-long': 'Two long, winding cracks on a stone of pink and green grains, each between four corners.',
  chip: 'A wide, shallow bite on the shoulder of a white stone, with a clear rim and a rough face.',
  'chip-red': 'A red stone with two pale, oval bites near its upper edge, and a few dark specks.',
  scratches:
    'A black stone with a bright reflection of the lamp, and two straight, thin, pale scratches, each between two lines.',
  'scratches-agate':
    'A banded brown agate with short, straight, thin lines among its bands, the brightest beside a pale band.',
  specks: 'A matte red stone with several small dark spots, all of them flat.',
  grains: 'A stone of white, gray and black angular grains.',
  bands: 'A brown agate with many wavy light and dark bands.',
  orbs: 'A green stone with pale round spots, each with a ring and a core.',
  moss: 'A white stone with green, torn, cloudy patches.',
  'lamp-here':
    'A pit and a dark speck on a white stone. The lamp stands at the lower right, and the pit is dark on that side.',
  'lamp-there':
    'The same pit and speck with the lamp at the top: now the upper side of the pit is dark, and the speck is as it was.',
  matte: 'A red stone without any reflection, only a soft brightness where the light falls.',
  satin: 'A red stone with two wide, soft, pale glows.',
  'semi-gloss': 'A red stone with a small bright reflection that fades into a haze around it.',
  gloss: 'A red stone with a small, bright, nearly sharp reflection of the lamp.',
  mirror: 'A green stone with a small, white, sharply cut reflection of the lamp.',
  ball: 'A black glass ball with one small, round, white reflection of the lamp.',
} as const;

/** What is written below each picture. Lengths come with their unit. */
export const captions = {
  pit: (across: string) =>
    `A pit, ${across} across. The brown spot at the left edge is a speck: no dark side, no bright side.`,
  pits: 'Five pits, marked. The three black specks are only color.',
  fracture: (length: string) => `A fracture, ${length} long.`,
  'fracture-long': 'Two fractures, marked. Together they are far over the usual limit: set aside.',
  chip: (across: string) => `A chip, ${across} across, on the shoulder.`,
  'chip-red': 'Two chips near the edge. The dark spots are specks.',
  /** The width is null where millimeters are spoken. */
  scratches: (width: string | null) =>
    `Two scratches of coarse grit, ${width ?? 'a tenth of a millimeter'} wide, marked.`,
  'scratches-agate':
    'Six short scratches. Among the bands an eye hardly sees them; the brightest shines beside the pale band.',
  specks: 'Specks. Evenly dark, no lit side.',
  grains: 'Grains. Hard edges, many alike.',
  bands: 'Bands. They run on and keep their distance.',
  orbs: 'Orbs. Rings within rings.',
  moss: 'Moss. Torn clouds of color.',
  'lamp-here': 'The lamp at the lower right: the pit is dark there.',
  'lamp-there': 'The lamp at the top: now the pit is dark at the top. The speck is as it was.',
  matte: 'No image of the lamp. The light fades softly. Coarse grit leaves it.',
  satin: 'A wide, soft glow where the lamp should be.',
  'semi-gloss': 'The lamp is there, with a haze around it.',
  gloss: 'The lamp is clear, its edge a little soft.',
  mirror: 'The lamp stands in the stone with a sharp edge.',
  ball: 'The reference ball. Its white spot is the lamp.',
} as const;
