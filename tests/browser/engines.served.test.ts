import { expect, it } from 'vitest';
import convolution from '../golden/convolution.json';
import { largestDifference } from '../helpers/largestDifference';
import { golden } from '../helpers/openCvGolden';
import { openPage } from '../helpers/openPage';
import { serveBuilt } from '../helpers/serveBuilt';
import type { EnginesAnswer } from './enginesPage/askEngines';

// Sources: OpenCV 4.6 and SciPy 1.10, tests/golden/opencv.py and convolution.py.
it('runs both engines in a built page without eval, from its own files, isolated', async () => {
  const served = await serveBuilt('tests/browser/enginesPage');
  const { page, errors, foreignRequests, close } = await openPage(served.url);
  await page.waitForFunction(() => document.querySelector('output')?.textContent);
  const text = (await page.textContent('output')) ?? '';
  const inPage = await page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content');
  const inHeader = (await fetch(served.url)).headers.get('Content-Security-Policy');
  await close();
  await served.close();

  const { resized, features, isIsolated }: EnginesAnswer = JSON.parse(text);
  expect(largestDifference(resized, golden.areaResize.gray7x5)).toBeLessThan(golden.tolerance);
  expect(largestDifference(features, convolution.features)).toBeLessThan(convolution.tolerance);
  expect(isIsolated).toBe(true);
  expect(inPage).toContain("script-src 'self' 'wasm-unsafe-eval';");
  expect(inHeader).toBe(`${inPage}; frame-ancestors 'none'`);
  expect(foreignRequests).toEqual([]);
  expect(errors).toEqual([]);
});
