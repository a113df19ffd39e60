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
  const page = await fetch(inject('appUrl'));
  const [, script] = /<script[^>]* src="([^"]+)"/.exec(await page.text()) ?? [];
  for (const { headers, ok } of [page, await fetch(new URL(script!, page.url))]) {
    expect(ok).toBe(true);
    const policy = headers.get('Content-Security-Policy') ?? '';
    expect(policy).toMatch(/^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self';/);
    expect(policy).toMatch(/frame-ancestors 'none'$/);
    expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|data:|\*/);
    expect(headers.get('Cross-Origin-Opener-Policy')).toBe('same-origin');
    expect(headers.get('Cross-Origin-Embedder-Policy')).toBe('require-corp');
    expect(headers.get('Cross-Origin-Resource-Policy')).toBe('same-origin');
    expect(headers.get('Referrer-Policy')).toBe('no-referrer');
    expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
  }
});

it('may use the camera for itself, and no other ability that browsers guard', async () => {
  const { page, close } = await openServedApp();
  // Client hints only say what kind of browser it is, and are asked for by servers, not by pages.
  const allowed = await page.evaluate(() =>
    (document as unknown as Policed).featurePolicy
      .allowedFeatures()
      .filter((name) => !name.startsWith('ch-'))
      .sort(),
  );
  await close();
  expect(allowed).toContain('camera');
  // A newer browser may know abilities that permissionsPolicy.ts does not name yet; those here it must.
  const guarded =
    'geolocation microphone usb serial hid midi payment gyroscope accelerometer magnetometer display-capture';
  expect(guarded.split(' ').filter((name) => allowed.includes(name))).toEqual([]);
  const headers = (await fetch(inject('appUrl'))).headers.get('Permissions-Policy') ?? '';
  expect(headers.split(', ').filter((rule) => !rule.endsWith('=()'))).toEqual([
    'camera=(self)',
    'cross-origin-isolated=(self)',
  ]);
});

/** Chromium's way to ask what the Permissions-Policy lets a page do. */
interface Policed {
  readonly featurePolicy: { allowedFeatures(): string[] };
}
