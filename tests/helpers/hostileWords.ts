import { OWN, WHOLE } from './hostileBatch';
import { type HostileCase, hostile, idOf, journalOf, withJournal } from './hostileCase';

/** A batch in which every word that an owner can write is this one. */
export const worded = (text: string): readonly unknown[] => [
  ...WHOLE.map((record) => {
    if (record.kind === 'batch' || record.kind === 'stone') return { ...record, name: text, source: text };
    if (record.kind !== 'check') return record;
    return { ...record, stones: record.stones.map((stone) => ({ ...stone, reasons: [text, text] })) };
  }),
  { kind: 'machine', id: idOf(1), name: text, type: 'rotary', capacityKg: 2 },
  {
    kind: 'run',
    id: idOf(2),
    batch: OWN,
    machine: idOf(1),
    step: 'coarse',
    startedOn: '2026-03-20',
    endedOn: null,
    charge: text,
  },
];

/** Words that mean something to a page, a drawing, a table, a calendar or a terminal, or that cannot be seen. */
export const WORDS: readonly (readonly [what: string, ...words: string[]])[] = [
  [
    'scripts',
    '<script>window.hurt=1</script>',
    '</text></svg><script>window.hurt=1</script>',
    '"><script>window.hurt=1</script>',
  ],
  [
    'pictures that run something',
    '<img src=x onerror="window.hurt=1">',
    '<svg onload="window.hurt=1">',
    '" onload="window.hurt=1',
    "' onfocus='window.hurt=1' autofocus='",
  ],
  [
    'markup of every kind',
    '<b>a</b> & &amp; &#60; &lt;script&gt; ]]> <!-- -->',
    '<![CDATA[ x ]]>',
    '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "b">]>&a;',
  ],
  [
    'frames, links and forms',
    '<iframe src="https://example.org">',
    '<a href="javascript:window.hurt=1">x</a>',
    'javascript:window.hurt=1',
    '<form action="https://example.org"><input>',
  ],
  ['templates', '{{7*7}}', `$${'{7*7}'}`, '<%= 7*7 %>', '#{7*7}', '%s%n%x'],
  [
    'formulas',
    '=1+1',
    '+1',
    '-1',
    '@SUM(1)',
    '=HYPERLINK("https://example.org","x")',
    'x;=1+1;',
    '\t=1',
    '＝1+1',
  ],
  ['quotes, commas and lines', 'a","b', 'a\r\n=1+1,b', "'; DROP TABLE stones; --", '\n\n', '\\,;\\n'],
  [
    'properties of a calendar',
    'x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:y',
    'x\nATTACH:https://example.org',
    'x\\nRRULE:FREQ=SECONDLY',
  ],
  ['names of what objects inherit', '__proto__', 'constructor', 'hasOwnProperty', 'toString', 'valueOf'],
  [
    'right-to-left letters',
    '\u202eevom\u202c',
    '\u2067\u2066\u2069',
    'החלוק \u202e 123',
    '\u061c\u200f\u200e',
  ],
  ['letters that cannot be seen', '\u200b\u200c\u200d\u2060\ufeff', '\u3164', '\u00a0', '\u00ad', ' '],
  [
    'halves of letters and control characters',
    '\ud800',
    'a\udc00b',
    '\u0000',
    '\u001b[2J\u0007',
    '\u0085\u2028\u2029',
  ],
  [
    'letters without end',
    'Z\u0301'.repeat(100),
    '👩‍👩‍👧‍👦'.repeat(18),
    'x'.repeat(200),
    '\u{1f3f4}'.repeat(100),
  ],
  ['nothing', ''],
];

/** Bundles with such words wherever an owner can write. */
export const TEXTS: readonly HostileCase[] = WORDS.map(([what, ...words]) =>
  hostile(
    `${what} in all that an owner can write`,
    null,
    ...words.map((text) => () => withJournal(journalOf(worded(text)))),
  ),
);
