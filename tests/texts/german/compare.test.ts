import { afterEach, beforeEach, expect, it } from 'vitest';
import type { CompareBy, CompareWhat } from '../../../src/compare/compareBy';
import { compareGroups } from '../../../src/compare/compareGroups';
import { countWords } from '../../../src/compare/compareWords';
import { groupSentence, groupWords, sureWords } from '../../../src/compare/groupWords';
import { standings } from '../../../src/compare/standings';
import { standingWords } from '../../../src/compare/standingWords';
import { stoneFigure } from '../../../src/compare/stoneFigure';
import type { StoneDigest } from '../../../src/history/batchDigest';
import { compare as english } from '../../../src/texts/english/compare';
import { english as allEnglish } from '../../../src/texts/english/english';
import { compare as german } from '../../../src/texts/german/compare';
import { german as allGerman } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import { favoriteLines, stoneWords } from '../../../src/ui/compare/stoneWords';
import { inventedDigest, inventedDigests, inventedGloss } from '../../compare/inventedDigest';
import { spokenPairs } from '../../helpers/spokenPairs';

beforeEach(() => speak({ language: 'de', texts: allGerman, length: 'mm' }));
afterEach(() => speak({ language: 'en', texts: allEnglish, length: 'mm' }));

const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ') ?? null;
const groupsOf = (stones: readonly StoneDigest[], what: CompareWhat, by: CompareBy) =>
  compareGroups(stones, by, what, new Map()).groups;

/** The sentence on the first group. */
const sentence = (stones: readonly StoneDigest[], what: CompareWhat, by: CompareBy = 'material') =>
  plain(groupSentence(groupsOf(stones, what, by)[0]!, by, what));

const glossy = inventedDigests([0.8, 0.85, 0.9, 0.92, 0.95], (share, place) => ({
  gloss: inventedGloss(share),
  batch: `b${place % 2}`,
}));

it('says everything in words of its own, with the numbers given', () => {
  const pairs = spokenPairs(english, german, {
    noneTells: ['size'],
    showMore: [40, 93],
    withoutFigure: [3],
    tableCaption: ['A'],
    showAllFavorites: [14],
    ofBatch: ['B7'],
    oneBatch: ['B7'],
    range: ['82', '93'],
    weeks: ['6'],
    count: [14],
    countOnly: [3],
    countOfBatches: [14, 3],
    stillInCoarse: [4],
    stillUnderWay: [4],
    setAside: [4],
    batchSince: ['2026-03-02'],
    within: ['Agate'],
    'subject.material': ['Agate'],
    'subject.source': ['B7'],
    'subject.batch': ['B7'],
    'subject.recipe': ['B7'],
    sentence: ['A', 'B'],
    tooFew: ['A', 3],
    reached: ['A', true, '88', 14, '82'],
    lost: ['A', false, '8', 14, '6'],
    gloss: ['88', '82'],
    size: ['8', '15', '6'],
    finished: [11, 14, '79', '52'],
    halfHadLeft: ['5 w'],
    quarterAfter: ['3'],
    threeQuartersAfter: ['7'],
    fewHadLeft: [5, 14],
    eachOfCeiling: ['75'],
    eachOfLength: ['8'],
    leftCoarse: [3],
    finishedCount: [3],
    likelyShare: ['52'],
    likelyMedian: ['82'],
    likelyWeeks: ['3', '7'],
    likelyWeeksOpen: ['3'],
    ...Object.fromEntries(
      ['gloss', 'coarse', 'size', 'finished'].flatMap((what) => [
        [`better.${what}`, ['A']],
        [`worse.${what}`, ['A']],
      ]),
    ),
    undecided: ['A'],
    others: [3],
    andLast: ['A, B', 'C', true],
    stoneGloss: ['90', '85', '86'],
    stoneInCoarse: ['6'],
    stoneSoFar: ['6'],
    stoneSetAside: ['6'],
    stoneSize: ['30', '27', '10', '20'],
    favoriteGloss: ['90', 'A'],
    favoriteLong: ['27'],
  });
  const same = pairs.filter((pair) => pair.english === pair.german).map(({ path }) => path);
  // Names alone and their place before a colon are the same in both.
  expect(same).toEqual(['subject.material', 'subject.batch', 'sentence']);
  for (const { path, german: said, numbers } of pairs) {
    for (const number of numbers) expect(said, path).toContain(number);
  }
});

it('counts one and several as German does', () => {
  expect([german.weeks('1'), german.weeks('6,1')]).toEqual(['1 Woche', '6,1 Wochen']);
  expect([german.count(1), german.count(14)]).toEqual(['1 Stein', '14 Steine']);
  expect([german.withoutFigure(1), german.withoutFigure(3)].map((said) => said.slice(0, 13))).toEqual([
    'Von 1 Stein g',
    'Von 3 Steinen',
  ]);
});

it('sums up groups in German', () => {
  expect(sentence(glossy, 'gloss')).toBe(
    'Achat: 90 % des Höchstglanzes erreicht (Median von 5; mittlere Hälfte 85 bis 92 %).',
  );
  expect(sentence(glossy, 'gloss', 'source')).toMatch(/^Steine aus Dry Creek: 90 %/);
  expect(sentence(glossy, 'gloss', 'recipe')).toMatch(
    /^Steine nach Grobschliff, Mittelschliff, Feinschliff,/,
  );
  expect(sentence(glossy.slice(2), 'gloss')).toBe('Achat: nur 3 Steine, darum wird nichts behauptet.');
  expect(countWords(groupsOf(glossy, 'gloss', 'material')[0]!, 'gloss')).toBe('5 Steine aus 2 Partien');
  const waiting = inventedDigests([2, 3, 4, 5, 6.5, 7, 7, 7], (time, place) => ({
    coarseDays: 7 * time,
    ...(place > 5 ? { steps: ['coarse' as const], action: 'repeat' as const } : {}),
  }));
  const group = groupsOf(waiting, 'coarse', 'material')[0]!;
  expect(groupWords(group, 'coarse')).toBe(
    'die Hälfte war nach 5 Wochen aus dem Grobschliff heraus, ein Viertel nach 3, drei Viertel nach 7; 2 noch im Grobschliff',
  );
  expect(sureWords({ ...group, sure: [2.5, null] }, 'coarse')).toMatch(/wohl bei 2,5 Wochen oder mehr/);
});

it('lists the others in German, what was not said in quotes', () => {
  const others = (['jasper', 'quartz', null] as const).flatMap((material) =>
    inventedDigests([0.2, 0.22, 0.24, 0.26, 0.28, 0.3, 0.32, 0.34], (share) => ({
      material,
      gloss: inventedGloss(share),
    })),
  );
  const agates = inventedDigests([0.9, 0.91, 0.92, 0.93, 0.94, 0.95, 0.96, 0.97], (share) => ({
    gloss: inventedGloss(share),
  }));
  const groups = groupsOf([...agates, ...others], 'gloss', 'material');
  expect(standingWords(standings(groups[0]!, groups, 'gloss'), 'material', 'gloss')).toEqual([
    'Mehr Glanz als Jaspis, Quarz und „Material nicht angegeben“.',
  ]);
});

it('tells a stone in German, and its lengths in inches where they are wanted', () => {
  const stone = inventedDigest();
  const words = (what: CompareWhat) => plain(stoneWords(stoneFigure(stone, what)!, what));
  expect(words('gloss')).toBe('90 % des Höchstglanzes (85 bis 95 %), 86 Glanzeinheiten');
  expect(words('size')).toBe('30 mm, jetzt 27 mm: 10 % der Länge und 20 % der Fläche verloren');
  expect(favoriteLines(stone).map(plain)).toEqual([
    '90 % seines Höchstglanzes, spiegelnd',
    '6 Wochen im Grobschliff',
    '27 mm lang',
    'fertig',
  ]);
  speak({ length: 'inch' });
  expect(words('size')).toMatch(/^1,2 in, jetzt 1,1 in:/);
});
