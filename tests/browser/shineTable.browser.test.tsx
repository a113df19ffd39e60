import { createRoot } from 'react-dom/client';
import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { ShineTable } from '../../src/ui/stone/ShineTable';
import '../../src/styles/all.css';
import { highlightOf } from '../helpers/measuredStone';

it('opens to eight figures that fit a phone, and closes again', async () => {
  const place = document.body.appendChild(document.createElement('div'));
  const gloss = glossOf(highlightOf(0.01, 0.5).byIndex, 'quartz');
  const root = createRoot(place);
  root.render(<ShineTable gloss={gloss} bodyReflectance={0.2} />);
  await expect.poll(() => place.querySelector('summary')).not.toBeNull();
  expect(place.querySelector('table')).toBeNull();
  place.querySelector('summary')!.click();
  await expect.poll(() => place.querySelectorAll('tbody tr').length).toBe(8);
  // A phone of 390 pixels, less the margins of the stone's sheet.
  expect(innerWidth).toBe(390);
  expect(place.querySelector('table')!.scrollWidth).toBeLessThanOrEqual(place.clientWidth);
  const cells = [...place.querySelectorAll('td')].map((cell) => cell.textContent);
  for (const cell of cells) expect(cell).toMatch(/\d/);
  place.querySelector('summary')!.click();
  await expect.poll(() => place.querySelector('table')).toBeNull();
  root.unmount();
  place.remove();
});
