import { afterEach, expect, it } from 'vitest';
import { rigAdvice } from '../../../src/grading/rigAdvice';
import { rigNotes } from '../../../src/grading/rigNotes';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import type { Texts } from '../../../src/texts/texts';

afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

type Words = Texts['rig'];

/** Every text said with sample facts; the facts that must be found again in it. */
const SAID: Readonly<Record<keyof Words, readonly [say: (words: Words) => string, ...facts: string[]]>> = {
  lampTooSmall: [(words) => words.lampTooSmall('2.1', '1.5'), '2.1°', '1.5'],
  lampGood: [(words) => words.lampGood('8'), '8°'],
  lampHopeless: [(words) => words.lampHopeless('12'), '12°'],
  lampTooLarge: [(words) => words.lampTooLarge('20', 'quarter'), '20°'],
  exposureGood: [(words) => words.exposureGood('60 %'), '60 %'],
  exposureOff: [(words) => words.exposureOff('95 %', 3, true), '95 %', '1½'],
  distanceGood: [(words) => words.distanceGood('1 in', '300', '0.02 in'), '1 in', '300', '0.02 in'],
  distanceOff: [(words) => words.distanceOff('1 mm', '7', '0.7 mm', '70 %'), '1 mm', '7', '0.7 mm', '70 %'],
  focusGood: [(words) => words.focusGood('1.1', '95 µm'), '1.1', '95 µm'],
  focusOff: [(words) => words.focusOff('2.4', '210 µm'), '2.4', '210 µm'],
  asRemembered: [(words) => words.asRemembered(true)],
  notAsRemembered: [(words) => words.notAsRemembered(false)],
  lampOff: [(words) => words.lampOff('4'), '4°'],
  lampLooks: [(words) => words.lampLooks('125 %'), '125 %'],
  shadowsTurned: [(words) => words.shadowsTurned('20'), '20°'],
  scaleChanged: [(words) => words.scaleChanged('90 %'), '90 %'],
  exposureChanged: [(words) => words.exposureChanged('140 %', false), '140 %'],
};

it('says everything in German, with its facts', () => {
  for (const [name, [say, ...facts]] of Object.entries(SAID)) {
    const [said, before] = [say(german.rig), say(english.rig)];
    expect(said, name).not.toBe(before);
    for (const fact of facts) for (const text of [said, before]) expect(text, name).toContain(fact);
  }
});

it('counts stops as photographers do', () => {
  const change = (halves: number) => german.rig.exposureOff(null, halves, false);
  expect(change(1)).toContain('eine halbe Blende heller');
  expect(change(2)).toContain('eine Blende heller');
  expect(change(4)).toContain('2 Blenden heller');
  expect(change(3)).toContain('ist heller, als die Kamera fasst');
});

const RIG = {
  mmPerPx: 0.1,
  light: { direction: [0.5, 0, 0.866], angularDiameterDeg: 6.3 },
  lampRadiance: 10,
  sourceSlope: 0.03,
  blurPx: 1,
} as const;

it('advises in German, with lengths in the owner’s unit', () => {
  speak({ language: 'de', texts: german });
  const about = (topic: string) => rigAdvice(RIG).find((one) => one.about === topic)!.sentence;
  expect(about('lamp')).toContain('6,3° breit');
  expect(about('distance')).toMatch(/^1 mm sind 10 Pixel, und Grübchen ab 0,38 mm sind zu sehen\.$/);
  expect(about('focus')).toBe('Kanten sind 1 Pixel weich, auf den Steinen 100 µm: scharf.');
  speak({ length: 'inch' });
  // 25.4 mm of 0.1 mm a pixel.
  expect(about('distance')).toMatch(/^1 in sind 254 Pixel, und Grübchen ab 0,015 in sind zu sehen\.$/);
  expect(about('focus')).toContain('0,004 in');
});

it('compares with what was remembered in German', () => {
  speak({ language: 'de', texts: german });
  const same = {
    ...{ byBall: true, changes: [], lampOffDeg: null, lampSizeRatio: null },
    ...{ shadowTurnDeg: null, scaleRatio: null, exposureRatio: null },
  };
  expect(rigNotes(same)).toEqual(['Lampe und Kamera stehen wie gemerkt (nach der Kugel).']);
  expect(rigNotes({ ...same, changes: ['camera-moved'], scaleRatio: 0.9 })).toEqual([
    'Lampe und Kamera stehen nicht wie gemerkt (nach der Kugel).',
    german.rig.scaleChanged('90 %'),
  ]);
});
