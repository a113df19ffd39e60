import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { StoneDigest } from '../../src/history/batchDigest';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import { speak } from '../../src/texts/speech';
import { CompareScreen } from '../../src/ui/compare/CompareScreen';
import '../../src/styles/all.css';
import { inventedDigests, inventedGloss } from '../compare/inventedDigest';

let place: HTMLElement;
let root: Root;
let opened: string[][];

beforeEach(() => {
  place = document.body.appendChild(document.createElement('div'));
  root = createRoot(place);
  opened = [];
});

afterEach(() => {
  root.unmount();
  place.remove();
  speak({ language: 'en', texts: english });
});

const agates = inventedDigests([0.8, 0.82, 0.84, 0.86, 0.88, 0.9, 0.92], (share, k) => ({
  stone: `agate-${k}`,
  gloss: inventedGloss(share),
  isFavorite: k === 6,
}));
const jaspers = inventedDigests([0.4, 0.45, 0.5, 0.52, 0.55, 0.6], (share, k) => ({
  stone: `jasper-${k}`,
  material: 'jasper',
  gloss: inventedGloss(share),
}));
const opals = inventedDigests([0.7, 0.9], (share, k) => ({
  stone: `opal-${k}`,
  material: 'opal',
  gloss: inventedGloss(share),
}));

function show(stones: readonly StoneDigest[]) {
  root.render(
    <CompareScreen
      stones={stones}
      batchNames={new Map([['batch-1', 'Winter barrel']])}
      onStone={(...ids) => opened.push(ids)}
      picture={(stone) => <i data-picture={stone.stone} />}
    />,
  );
}

const rows = () => [...place.querySelectorAll<HTMLButtonElement>('.compare-open')];
const said = () => place.querySelector('[role=status]')?.textContent?.replaceAll('\u00a0', ' ');

it('puts the best first, says what can be said, and sets small groups apart', async () => {
  show([...opals, ...jaspers, ...agates]);
  await expect.poll(() => rows().length).toBe(3);
  expect(rows().map((row) => row.querySelector('strong')?.textContent)).toEqual(['Agate', 'Jasper', 'Opal']);
  expect(said()).toBe(
    'Agate reached 86 % of its ceiling (median of 7; half of them 83 to 89 %). Higher than jasper.',
  );
  expect(rows()[2]?.textContent).toContain('2 stones only');
  const heading = place.querySelector('.compare-few')!;
  expect(heading.compareDocumentPosition(rows()[2]!)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
});

it('opens the stones of a group, the best first, and leads to each', async () => {
  show([...agates, ...jaspers]);
  await expect.poll(() => rows().length).toBe(2);
  rows()[0]!.click();
  await expect.poll(() => place.querySelectorAll('.compare-stone').length).toBe(7);
  expect(rows()[0]?.getAttribute('aria-expanded')).toBe('true');
  expect(document.getElementById(rows()[0]!.getAttribute('aria-controls')!)?.textContent).toContain(
    'All of one batch',
  );
  place.querySelector<HTMLButtonElement>('.compare-stone')!.click();
  expect(opened).toEqual([['batch-1', 'agate-6']]);
});

it('compares something else at a press, and shows the favorites', async () => {
  show([...agates, ...jaspers]);
  await expect.poll(() => rows().length).toBe(2);
  place.querySelector<HTMLInputElement>('input[value=finished]')!.click();
  await expect.poll(said).toMatch(/^Agate: 7 of 7 finished, 100 %; the true share is likely 65 to 100 %/);
  place.querySelector<HTMLInputElement>('input[value=source]')!.click();
  await expect
    .poll(() => rows().map((row) => row.querySelector('strong')?.textContent))
    .toEqual(['Dry Creek']);
  expect(
    [...place.querySelectorAll('[data-picture]')].map((one) => one.getAttribute('data-picture')),
  ).toEqual(['agate-6']);
});

it('fits a phone, with targets of 44 pixels, and gives the same figures as a table', async () => {
  show([...agates, ...jaspers, ...opals]);
  await expect.poll(() => rows().length).toBe(3);
  place.querySelector('summary')!.click();
  await expect.poll(() => place.querySelectorAll('tbody tr').length).toBe(3);
  const cells = [...place.querySelectorAll('td')].map((cell) => cell.textContent?.replaceAll('\u00a0', ' '));
  expect(cells).toEqual(['86 %', '51 %', '–']);
  expect(innerWidth).toBe(390);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
  for (const target of place.querySelectorAll('button, summary, label')) {
    const { width, height } = target.getBoundingClientRect();
    expect(Math.min(width, height), target.textContent ?? '').toBeGreaterThanOrEqual(44);
  }
});

it('says what must be kept when there is nothing to compare, or not for this', async () => {
  show([]);
  await expect.poll(() => place.textContent).toMatch(/Nothing can be compared yet.*a check after polish/s);
  show(agates.map((stone) => ({ ...stone, gloss: null })));
  await expect
    .poll(() => place.textContent)
    .toMatch(/No stone kept so far tells this. It takes a check after polish/);
});

it('follows a change of language in all it shows, and fits the phone in German', async () => {
  show([...agates, ...jaspers, ...opals]);
  await expect.poll(() => rows().length).toBe(3);
  rows()[0]!.click();
  await expect.poll(() => place.querySelectorAll('.compare-stone').length).toBe(7);
  place.querySelector('summary')!.click();
  await expect.poll(() => place.querySelectorAll('tbody tr').length).toBe(3);
  speak({ language: 'de', texts: german });
  await expect.poll(said).toMatch(/^Achat: 86 % des Höchstglanzes erreicht .* Mehr Glanz als Jaspis\.$/);
  expect(rows().map((row) => row.querySelector('strong')?.textContent)).toEqual(['Achat', 'Jaspis', 'Opal']);
  expect(place.textContent).not.toMatch(/\b(the|of|stones?|ceiling|Show|Compare)\b/);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
  for (const label of place.querySelectorAll('.compare-ways .step')) {
    expect(label.scrollWidth, label.textContent ?? '').toBeLessThanOrEqual(label.clientWidth);
  }
});
