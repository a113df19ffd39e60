import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { Router } from 'wouter';
import { memoryLocation } from 'wouter/memory-location';
import { english } from '../../src/texts/english/english';
import { help } from '../../src/texts/english/help';
import { german } from '../../src/texts/german/german';
import { help as hilfe } from '../../src/texts/german/help';
import type { Language } from '../../src/texts/languages';
import { speak } from '../../src/texts/speech';
import { HelpScreen } from '../../src/ui/help/HelpScreen';
import { HELP_SECTIONS, headingId } from '../../src/ui/help/helpSections';
import '../../src/styles/all.css';
import '../../src/styles/help.css';

let place: HTMLElement;
let root: Root;

beforeEach(() => {
  place = document.body.appendChild(document.createElement('main'));
  root = createRoot(place);
});

afterEach(async () => {
  root.unmount();
  speak({ language: 'en', texts: english, length: 'mm' });
  place.remove();
  await page.viewport(390, 844);
});

async function show(section?: string): Promise<string[]> {
  const { hook, history } = memoryLocation({ path: '/help', record: true });
  root.render(
    <Router hook={hook}>
      <HelpScreen section={section} />
    </Router>,
  );
  await expect.poll(() => place.querySelectorAll('h3').length).toBeGreaterThan(5);
  return history;
}

const pictures = () => [...place.querySelectorAll('img')];

it('shows every picture, each with words for those who cannot see it', async () => {
  await show();
  for (const picture of pictures()) picture.loading = 'eager';
  await expect.poll(() => pictures().filter((one) => one.naturalWidth === 320).length).toBe(21);
  for (const { alt } of pictures()) expect(alt.length).toBeGreaterThan(30);
  expect(new Set(pictures().map(({ alt }) => alt)).size).toBe(21);
});

it('has its headings in order and names every section once', async () => {
  await show();
  const levels = [...place.querySelectorAll('h2, h3, h4')].map(({ tagName }) => Number(tagName[1]));
  expect(levels[0]).toBe(2);
  levels.slice(1).forEach((level, i) => {
    expect(level - levels[i]!).toBeLessThanOrEqual(1);
  });
  for (const { id } of HELP_SECTIONS) {
    const headings = place.querySelectorAll(`[id="${headingId(id)}"]`);
    expect(headings).toHaveLength(1);
    expect(headings[0]?.textContent).toBe(help.sections[id]);
  }
  for (const section of place.querySelectorAll('section')) {
    expect(document.getElementById(section.getAttribute('aria-labelledby')!)).not.toBeNull();
  }
});

it.each(HELP_SECTIONS.map(({ id }) => id))('opens at /help/%s with the keyboard there', async (id) => {
  await show(id);
  const heading = document.getElementById(headingId(id))!;
  await expect.poll(() => document.activeElement).toBe(heading);
  const { top } = heading.getBoundingClientRect();
  expect(top).toBeGreaterThanOrEqual(-1);
  expect(top).toBeLessThan(innerHeight);
  expect(place.querySelector('[aria-current]')?.textContent).toBe(heading.textContent);
});

it('stays at the top under an address that names nothing', async () => {
  await show('nothing');
  expect(document.activeElement).toBe(document.body);
  expect(place.querySelector('[aria-current]')).toBeNull();
});

it('leads from its contents to every section', async () => {
  const history = await show();
  const links = [...place.querySelectorAll<HTMLAnchorElement>('.help-contents a')];
  expect(links).toHaveLength(HELP_SECTIONS.length);
  for (const link of links) link.click();
  expect(history.slice(1)).toEqual(HELP_SECTIONS.map(({ id }) => `/help/${id}`));
});

it.each([
  [390, 844],
  [1440, 900],
])('fits %i × %i, its contents large enough for a thumb', async (width, height) => {
  await page.viewport(width, height);
  await show();
  expect(innerWidth).toBe(width);
  for (const [language, texts] of Object.entries({ en: english, de: german })) {
    speak({ language: language as Language, texts });
    const { title } = language === 'de' ? hilfe.page : help.page;
    await expect.poll(() => place.querySelector('h2')?.textContent).toBe(title);
    expect(document.documentElement.scrollWidth, language).toBeLessThanOrEqual(width);
    for (const link of place.querySelectorAll('.help-contents a')) {
      expect(link.getBoundingClientRect().height, link.textContent ?? '').toBeGreaterThanOrEqual(44);
    }
  }
});

it('says what is not reached before what is', async () => {
  await show('trust');
  const headings = [...place.querySelectorAll('h4')].map(({ textContent }) => textContent);
  const missed = headings.indexOf('What it does not reach');
  expect(missed).toBeGreaterThan(0);
  expect(headings.indexOf('What it does well')).toBeGreaterThan(missed);
});

it('follows the language and the unit of lengths while it is open', async () => {
  await show();
  const captions = () => [...place.querySelectorAll('figcaption')].map(({ textContent }) => textContent);
  expect(captions()).toContain('A fracture, 7 mm long.');
  expect(captions()).toContain('Two scratches of coarse grit, a tenth of a millimeter wide, marked.');
  speak({ language: 'de', texts: german, length: 'inch' });
  await expect.poll(() => place.querySelector('h2')?.textContent).toBe('Hilfe');
  for (const { id } of HELP_SECTIONS)
    expect(document.getElementById(headingId(id))?.textContent).toBe(hilfe.sections[id]);
  expect(captions()).toContain('Ein Riss, 0,28 in lang.');
  expect(captions()).toContain(`Matt, unter 10 Glanzeinheiten. ${hilfe.captions.matte}`);
  expect(place.querySelector('.help-steps')?.textContent).toContain('6 in breit und 24 in entfernt');
  expect(pictures().map(({ alt }) => alt)).toContain(hilfe.alts.moss);
});
