import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { contrastRatio } from '../helpers/contrastRatio';

const css = readFileSync(new URL('../../src/styles/theme.css', import.meta.url), 'utf8');
const [light = '', dark = ''] = css.split('@media (prefers-color-scheme: dark)');

function colorsOf(theme: string): ReadonlyMap<string, string> {
  return new Map(
    [...theme.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map((match) => [match[1] ?? '', match[2] ?? '']),
  );
}

for (const [name, theme] of [
  ['light', colorsOf(light)],
  ['dark', colorsOf(dark)],
] as const) {
  it(`keeps every ink readable on every ground of the ${name} theme`, () => {
    // WCAG 2.2, success criterion 1.4.3: at least 4.5:1 for text.
    const inks = [
      'ink',
      'soft',
      'advance',
      'repeat',
      'back-to-coarse',
      'set-aside',
      'finished',
      'look-closer',
    ];
    for (const ink of inks) {
      for (const ground of ['ground', 'surface', 'sunk']) {
        const ratio = contrastRatio(theme.get(ink) ?? '', theme.get(ground) ?? '');
        expect(ratio, `${ink} on ${ground}`).toBeGreaterThanOrEqual(4.5);
      }
    }
  });

  it(`keeps strong buttons and the focus ring visible in the ${name} theme`, () => {
    // WCAG 2.2, success criteria 1.4.3 and 1.4.11: 4.5:1 for text, 3:1 for what shows a control.
    expect(contrastRatio(theme.get('on-strong') ?? '', theme.get('strong') ?? '')).toBeGreaterThanOrEqual(
      4.5,
    );
    expect(contrastRatio(theme.get('focus') ?? '', theme.get('ground') ?? '')).toBeGreaterThanOrEqual(3);
  });
}
