import type { Step } from '../../grading/steps';
import type { Texts } from '../texts';
import { grits, inStep, wayBack } from './stepNames';

export const flaws: Texts['verdicts']['flaws'] = {
  pit: 'Grübchen',
  fracture: 'Riss',
  chip: 'Ausbruch',
  scratch: 'Kratzer',
};
export const flawPlurals: Texts['verdicts']['flawPlurals'] = {
  pit: 'Grübchen',
  fracture: 'Risse',
  chip: 'Ausbrüche',
  scratch: 'Kratzer',
};

type Kind = keyof typeof flaws;

/** Wann ein Grenzwert gilt. */
function occasion(step: Step): string {
  if (step === 'coarse') return 'vor dem Verlassen des Grobschliffs';
  return step === 'polish' ? 'für einen fertigen Stein' : inStep(step);
}

/** „keine Grübchen“, „1 Riss“, „0,2 Grübchen“. */
function count(number: string | null, kind: Kind): string {
  if (number === null) return `keine ${flawPlurals[kind]}`;
  return `${number} ${number === '1' ? flaws[kind] : flawPlurals[kind]}`;
}

const found = (fractures: number, length: string) =>
  fractures === 1 ? `Ein Riss von ${length}` : `${fractures} Risse, zusammen ${length}`;

export const flawReasons = {
  flawCount: count,
  fracturesTooLong: (fractures, length) =>
    `${found(fractures, length)}: Solche Risse öffnen sich oft nur weiter. Säg den Stein dort durch, brich ihn, oder behalte ihn, wie er ist.`,
  fracturesOver: (fractures, length, limit, step) =>
    `${found(fractures, length)}; der Grenzwert ${occasion(step)} ist ${limit}.`,
  pitsOver: (density, per, limit, step) =>
    `${count(density, 'pit')} ${per}; der Grenzwert ${occasion(step)} ist ${limit}.`,
  pitsHoldGrit: 'Grübchen halten Korn fest, das die Partie zerkratzen würde.',
  widestPit: (size, limit, step) =>
    `Das breiteste Grübchen misst ${size}; der Grenzwert ${occasion(step)} ist ${limit}.`,
  widestChip: (size, limit, step) =>
    `Ein Ausbruch von ${size}; der Grenzwert ${occasion(step)} ist ${limit}.`,
  scratchesOver: (scratches, cause, back) => {
    const many = scratches === 1 ? 'Ein frischer Kratzer' : `${scratches} frische Kratzer`;
    const why =
      cause === null
        ? 'Vielleicht ist gröberes Korn hineingeraten'
        : `etwa ${cause.width} breit, wie loses ${grits[cause.origin]} sie hinterlässt`;
    return `${many}: ${why}. Wasch Steine und Trommel aus, und ${wayBack(back)}.`;
  },
  tooFaint: (doubtful) =>
    `Vielleicht zeigt das Foto noch ${doubtful.map(([number, kind]) => count(number, kind)).join(' und ')}, zu schwach, um sicher zu sein; echte lägen über dem Grenzwert. Prüf es mit der Lupe.`,
  sound: (pits, fractures) =>
    `In Ordnung: ${pits === null ? 'keine Grübchen' : `${count(pits.density, 'pit')} ${pits.per}`} und ${fractures === null ? 'keine Risse' : `${fractures} Risse`} auf der sichtbaren Seite.`,
  noneSeen: (kind) => `${count(null, kind)} zu sehen`,
  seenOn: (number, kind, total, surface) => {
    const measure = kind === 'pit' || kind === 'chip' ? 'breit' : 'lang';
    return `${count(number, kind)}, ${number === '1' ? '' : 'zusammen '}${total} ${measure}, auf ${surface}`;
  },
  fewScratched: (stones, all) => {
    const one = stones.length === 1;
    const named = one
      ? `Stein ${stones[0]}`
      : `die Steine ${stones.slice(0, -1).join(', ')} und ${stones.at(-1)}`;
    return `Von ${all} ${one ? 'zeigt' : 'zeigen'} nur ${named} frische Kratzer. Helle und lebhaft gemusterte Steine verbergen ihre: Sieh dir einige mit der Lupe an. Sind auch sie zerkratzt, ist Korn in die Partie geraten; sonst war es eine scharfe Kante oder ein härterer Nachbar.`;
  },
  batchScratched: (stones, all, origin, back) => {
    const grit = origin === null ? 'gröberes Korn' : `${grits[origin]} oder Ähnliches`;
    return `${stones.length} von ${all} Steinen sind frisch zerkratzt (${stones.join(', ')}): Wahrscheinlich ist ${grit} in die Partie geraten. Wasch Trommel, Deckel und jeden Stein aus, auch die ohne sichtbaren Kratzer, wirf Schleifschlamm und Kornzugabe weg, und ${wayBack(back)}.`;
  },
} satisfies Partial<Texts['verdicts']['reasons']>;
