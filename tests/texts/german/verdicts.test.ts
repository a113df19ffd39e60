import { afterEach, expect, it } from 'vitest';
import { contamination } from '../../../src/grading/contamination';
import { gradeStone } from '../../../src/grading/gradeStone';
import { MATERIAL_NAMES } from '../../../src/grading/materials';
import { STEPS } from '../../../src/grading/steps';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import type { Texts } from '../../../src/texts/texts';
import { measuredStone, pits } from '../../helpers/measuredStone';

const speakGerman = () => speak({ language: 'de', texts: german });
afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

type Reasons = Texts['verdicts']['reasons'];

/** Every reason said with sample facts; the facts that must be found again in it. */
const SAID: Readonly<Record<string, readonly [say: (words: Reasons) => string, ...facts: string[]]>> = {
  flawCount: [(words) => words.flawCount('3', 'chip'), '3'],
  fracturesTooLong: [(words) => words.fracturesTooLong(2, '9.4 mm'), '2', '9.4 mm'],
  fracturesOver: [(words) => words.fracturesOver(3, '4 mm', '2 mm', 'fine'), '3', '4 mm', '2 mm'],
  pitsOver: [(words) => words.pitsOver('3.2', 'per in²', '0.5', 'polish'), '3.2', 'per in²', '0.5'],
  widestPit: [(words) => words.widestPit('1.2 mm', '0.8 mm', 'coarse'), '1.2 mm', '0.8 mm'],
  widestChip: [(words) => words.widestChip('1.9 mm', '1.5 mm', 'medium'), '1.9 mm', '1.5 mm'],
  scratchesOver: [
    (words) => words.scratchesOver(4, { width: '0.07 mm', origin: 'coarse' }, 'medium'),
    '4',
    '0.07 mm',
    '60/90',
  ],
  tooFaint: [(words) => words.tooFaint([['2', 'fracture']]), '2'],
  sound: [(words) => words.sound({ density: '0.3', per: 'per cm²' }, '1.1 mm'), '0.3', '1.1 mm'],
  noneSeen: [(words) => words.noneSeen('scratch')],
  seenOn: [(words) => words.seenOn('3', 'pit', '1.4 mm', '3.2 cm²'), '3', '1.4 mm', '3.2 cm²'],
  fewScratched: [(words) => words.fewScratched([4, 7], 30), '4', '7', '30'],
  batchScratched: [(words) => words.batchScratched([1, 5, 8], 12, 'medium', 'fine'), '1, 5, 8', '12', '220'],
  reading: [(words) => words.reading('24', '20', '29'), '24', '60°', '20', '29'],
  dullAsGround: [(words) => words.dullAsGround('24', 'coarse'), '24'],
  expected: [(words) => words.expected('24', '31', 'prepolish'), '24', '31'],
  maybeSmooth: [(words) => words.maybeSmooth('24', '31', 'fine'), '24', '31'],
  polished: [(words) => words.polished('80', 'gloss', '91 %', null, '88'), '80', '91 %', '88'],
  couldBeLess: [(words) => words.couldBeLess('70 %', '75 %'), '70 %', '75 %'],
  finishedMeans: [(words) => words.finishedMeans('75 %', '66'), '75 %', '66'],
  couldBeMore: [(words) => words.couldBeMore('78 %'), '78 %'],
  oftenStops: [(words) => words.oftenStops('jasper', 'satin')],
  dullExpected: [(words) => words.dullExpected('9', 'medium'), '9', '60°'],
  tooDull: [(words) => words.tooDull('9', '12', 'fine'), '9', '12'],
  highlightMissing: [(words) => words.highlightMissing(null, 'polish')],
  wet: [(words) => words.wet('62', '40', 'coarse', true), '62', '40'],
  fewPixels: [(words) => words.fewPixels('44'), '44'],
  littleInspected: [(words) => words.littleInspected('20 %'), '20 %'],
  tooSmall: [(words) => words.tooSmall('9 mm', '10 mm'), '9 mm', '10 mm'],
};

it('says every reason in German, with its facts', () => {
  const functions = Object.entries(german.verdicts.reasons).filter(([, text]) => typeof text === 'function');
  expect(Object.keys(SAID).sort()).toEqual(functions.map(([name]) => name).sort());
  for (const [name, [say, ...facts]] of Object.entries(SAID)) {
    const [said, before] = [say(german.verdicts.reasons), say(english.verdicts.reasons)];
    expect(said, name).not.toBe(before);
    for (const fact of facts) for (const text of [said, before]) expect(text, name).toContain(fact);
  }
});

it('counts in singular and plural', () => {
  const { flawCount } = german.verdicts.reasons;
  const counted = [null, '1', '0,2', '3'].map((number) => flawCount(number, 'fracture'));
  expect(counted).toEqual(['keine Risse', '1 Riss', '0,2 Risse', '3 Risse']);
  expect(english.verdicts.reasons.flawCount(null, 'pit')).toBe('no pits');
  expect(english.verdicts.reasons.flawCount('1', 'fracture')).toBe('1 fracture');
  expect(english.verdicts.reasons.flawCount('0.2', 'pit')).toBe('0.2 pits');
  expect(english.verdicts.reasons.flawCount('3', 'scratch')).toBe('3 scratches');
});

it('puts steps into German sentences with their article', () => {
  const { tooDull, wet, scratchesOver } = german.verdicts.reasons;
  expect(tooDull(null, '12', 'fine')).toContain('nach dem Feinschliff');
  expect(tooDull(null, '12', 'polish')).toContain('nach der Politur');
  expect(wet('62', '40', 'coarse', false)).toContain('der Grobschliff lässt höchstens');
  expect(scratchesOver(2, null, 'prepolish')).toContain('geh zurück zur Vorpolitur');
  expect(scratchesOver(2, null, null)).toContain('wiederhole diesen Gang');
});

it('names every step, material, hazard and caution, those of stones alike in few languages', () => {
  const { verdicts } = german;
  const own = MATERIAL_NAMES.filter((name) => verdicts.materials[name] !== name);
  expect(own).toHaveLength(MATERIAL_NAMES.length);
  expect(new Set(STEPS.map((step) => verdicts.steps[step])).size).toBe(STEPS.length);
  expect([verdicts.stone(3), verdicts.stoneWithin('7')]).toEqual(['Stein 3', 'Stein 7']);
  expect(verdicts.cautions['hazardous-stones']).toMatch(/Asbest.*Kupfer.*Arsen.*Vorschriften.*Fach/);
});

const PITTED = measuredStone({
  flaws: [{ kind: 'pit', diameterMm: 2.54, confidence: 1 }],
});
const SETTINGS = { step: 'coarse', material: null, limits: null } as const;

it('grades a stone in German with a decimal comma, in the owner’s unit', () => {
  speakGerman();
  expect(gradeStone(PITTED, SETTINGS).verdict.reasons.join(' ')).toMatch(
    /Das breiteste Grübchen misst 2,5 mm; der Grenzwert .* ist 0,8 mm\./,
  );
  speak({ length: 'inch' });
  const { verdict, smoothnessParts } = gradeStone(PITTED, SETTINGS);
  expect(verdict.reasons.join(' ')).toMatch(/misst 0,1 in; der Grenzwert .* ist 0,031 in\./);
  // 2 per cm² are 2 · 2.54² = 12.9 per square inch.
  const many = gradeStone(measuredStone({ flaws: pits(10) }), SETTINGS);
  expect(many.verdict.reasons[0]).toMatch(/^13 Grübchen je Quadratzoll; .* ist 3,2\.$/);
  expect(smoothnessParts[0]!.why).toMatch(/^1 Grübchen, 0,1 in breit, auf .* in²$/);
});

it('tells of scratches all over a tray in German', () => {
  speakGerman();
  const scratched = Array.from({ length: 3 }, (_, index) =>
    measuredStone({
      id: index + 1,
      flaws: [1, 2].map(() => ({ kind: 'scratch', lengthMm: 5, confidence: 1 }) as const),
    }),
  );
  expect(contamination(scratched, 'polish', null)?.sentence).toMatch(
    /^3 von 3 Steinen sind frisch zerkratzt \(1, 2, 3\): Wahrscheinlich ist gröberes Korn/,
  );
});
