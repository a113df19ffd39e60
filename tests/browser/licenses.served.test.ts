import { expect, inject, it } from 'vitest';
import { lockedPackages } from '../dependencies/packages';
import { REASONS } from '../dependencies/reasons';

it('hands out the licenses of all packages in the page, workers included, and holds no others', async () => {
  const text = await (await fetch(new URL('licenses.txt', inject('appUrl')))).text();
  const listed = [...text.matchAll(/^={80}\n(\S+) (\S+): (.+)$/gm)];
  const names = listed.map(([, name]) => name!);
  const direct = Object.keys(REASONS).filter((name) => REASONS[name]?.[0] === 'page');
  expect(names.filter((name) => name in REASONS).sort()).toEqual(direct.sort());
  // What these bring along themselves.
  expect(names.filter((name) => !(name in REASONS))).toEqual([
    'regexparam',
    'scheduler',
    'use-sync-external-store',
  ]);
  const locked = lockedPackages();
  for (const [, name, version, license] of listed)
    expect(locked.get(`node_modules/${name}`)).toMatchObject({ version, license });
  expect(text).toContain('GNU LESSER GENERAL PUBLIC LICENSE');
});
