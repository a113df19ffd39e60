import { afterEach, expect, it } from 'vitest';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import { speak } from '../../src/texts/speech';
import { typedNumber } from '../../src/texts/typedNumber';

afterEach(() => speak({ language: 'en', texts: english }));

const LANGUAGES = [
  ['en', english],
  ['de', german],
] as const;

it.each(LANGUAGES)('takes point and comma for the decimal mark: %s', (language, texts) => {
  speak({ language, texts });
  for (const [typed, number] of [
    ['5.4', 5.4],
    ['5,4', 5.4],
    [' 12 ', 12],
    [',5', 0.5],
    ['.25', 0.25],
    ['3,', 3],
    ['0,125', 0.125],
    ['0.125', 0.125],
    ['1250', 1250],
    ['1250,5', 1250.5],
    ['1,25', 1.25],
  ] as const)
    expect(typedNumber(typed), typed).toBe(number);
});

it.each(LANGUAGES)('takes nothing for a number that is none: %s', (language, texts) => {
  speak({ language, texts });
  const none = [
    '',
    ' ',
    '-1',
    '1e3',
    '1.250,5',
    '1,250.5',
    '1..2',
    '5 4',
    '٥',
    'five',
    '.',
    'Infinity',
    '0x10',
  ];
  for (const typed of none) expect(typedNumber(typed), typed).toBeNull();
});

it('takes no guess where three digits follow the mark for thousands', () => {
  expect(typedNumber('1,250')).toBeNull();
  expect(typedNumber('1.250')).toBe(1.25);
  speak({ language: 'de', texts: german });
  expect(typedNumber('1.250')).toBeNull();
  expect(typedNumber('1,250')).toBe(1.25);
});
