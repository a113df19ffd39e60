import { expect, inject, it } from 'vitest';
import { openServedApp } from '../helpers/servedApp';

it('opens the built app under its policy and measures: no error on the console, no request to anywhere else', {
  timeout: 200_000,
}, async () => {
  const { page, errors, foreignRequests, close } = await openServedApp({
    viewport: { width: 390, height: 844 },
  });
  // By then every part of the program was loaded: page, worker, OpenCV, ONNX Runtime and the network.
  await page.locator('.sorting-picture svg').waitFor({ timeout: 180_000 });
  await close();
  expect(errors).toEqual([]);
  expect(foreignRequests).toEqual([]);
});

it('sends the policy and the headers of an isolated page with every file', async () => {
  const { headers } = await fetch(inject('appUrl'));
  expect(headers.get('Content-Security-Policy')).toMatch(
    /^default-src 'self'; script-src 'self' 'wasm-unsafe-eval';/,
  );
  expect(headers.get('Content-Security-Policy')).not.toMatch(
    /unsafe-inline|unsafe-eval'(?<!wasm-unsafe-eval')|https?:/,
  );
  expect(headers.get('Cross-Origin-Opener-Policy')).toBe('same-origin');
  expect(headers.get('Cross-Origin-Embedder-Policy')).toBe('require-corp');
});
