import { expect, it } from 'vitest';
import { buildTwice } from './buildElsewhere';

it('builds the same files byte for byte in another folder, time zone and language, all but a few named by content', async () => {
  const [first, second] = await buildTwice();
  expect([...second]).toEqual([...first]);
  expect(first.size).toBeGreaterThan(40);
  const names = [...first.keys()].filter((name) => !/^assets\/.+-[\w-]{8}\.\w+$/.test(name));
  // Addresses that must stay: the page, what it is installed by, and what people look for by name.
  expect(names.filter((name) => !name.startsWith('icons/'))).toEqual([
    'index.html',
    'licenses.txt',
    'manifest.webmanifest',
    'serviceWorker.js',
  ]);
});
