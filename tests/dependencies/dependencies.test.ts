import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { withTable } from './dependencyTable';
import { askedFor, lockedPackages, nameOf } from './packages';
import { REASONS } from './reasons';

const root = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (file: string) => readFileSync(`${root}${file}`, 'utf8');
const asked = askedFor();
const locked = lockedPackages();

/** Licenses under which a package may be used without the program's own license changing (SPDX names). */
const ALLOWED = [
  ...['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'Unlicense', 'BlueOak-1.0.0'],
  ...['MPL-2.0', 'MIT OR Apache-2.0', '(MIT OR CC0-1.0)'],
];
/** Libraries under the LGPL, which stay files of their own that can be replaced. */
const LIBRARIES = /^(libheif-js|@img\/sharp-(libvips-[\w-]+|win32-\w+|wasm32))$/;
const LESSER = /^(Apache-2\.0 AND )?LGPL-3\.0(-or-later)?( AND MIT)?$/;
/** Names no license in its package.json; its LICENSE file has the three clauses of BSD. */
const UNNAMED: Record<string, string> = { 'parse-cache-control': 'BSD-3-Clause' };

it('has the table of DEVELOPERS.md as package.json, package-lock.json and the reasons make it (npm run dependencies)', () => {
  const text = textOf('DEVELOPERS.md');
  expect(withTable(text)).toBe(text);
  expect(text).toMatch(/\| libheif-js \| [\d.]+ \| LGPL-3\.0 \| page \|/);
});

it('says of every dependency why it is there, and of none that is gone', () => {
  expect(Object.keys(REASONS).sort()).toEqual(Object.keys(asked).sort());
});

it('asks for exact versions, locks these very ones, and knows the content of every package', () => {
  for (const [name, version] of Object.entries(asked)) {
    expect(version, name).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
    expect(locked.get(`node_modules/${name}`)?.version, name).toBe(version);
  }
  expect(
    [...locked].filter(([, one]) => !/^sha512-/.test(one.integrity ?? '')).map(([name]) => name),
  ).toEqual([]);
});

it('lets no package ask for whatever is newest, which would break npm ci on the day of its next version', () => {
  const { overrides } = JSON.parse(textOf('package.json'));
  const newest = [...locked].flatMap(([, { dependencies = {} }]) =>
    Object.keys(dependencies).filter((name) => /^[a-z]+$/i.test(dependencies[name] ?? '')),
  );
  expect(newest.sort()).toEqual(['legacy-javascript', 'third-party-web']);
  for (const name of newest) expect(overrides[name]).toBe(locked.get(`node_modules/${name}`)?.version);
});

it('imports or runs every dependency', () => {
  const sources = ['src', 'tests', '.config', 'sample-images'].flatMap((folder) =>
    readdirSync(`${root}${folder}`, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|tsx|mjs|mts)$/.test(file) && !file.startsWith('dependencies'))
      .map((file) => textOf(`${folder}/${file}`)),
  );
  const { scripts } = JSON.parse(textOf('package.json'));
  const commands = Object.values<string>(scripts).join(' ');
  const programs: Record<string, string> = { '@biomejs/biome': 'biome ', typescript: 'tsc ' };
  const isUsed = (name: string) =>
    name.startsWith('@types/') ||
    commands.includes(programs[name] ?? '-') ||
    sources.some((text) => text.includes(`'${name}'`) || text.includes(`'${name}/`));
  expect(Object.keys(asked).filter((name) => !isUsed(name))).toEqual([]);
});

it('brings no package under a license that is not allowed', () => {
  const refused = [...locked].filter(([folder, { license }]) => {
    const name = nameOf(folder);
    const named = license ?? UNNAMED[name] ?? '';
    return !(LIBRARIES.test(name) ? LESSER : { test: (one: string) => ALLOWED.includes(one) }).test(named);
  });
  expect(refused.map(([folder, { license }]) => `${folder}: ${license}`)).toEqual([]);
  expect([...locked.keys()].length).toBeGreaterThan(100);
});

it('needs no script of any package at installation, and runs none', () => {
  // protobufjs, which ONNX Runtime's page build does not load, only compares version numbers there.
  const scripted = [...locked].filter(([, one]) => one.hasInstallScript).map(([folder]) => nameOf(folder));
  expect(scripted.filter((name) => name !== 'protobufjs')).toEqual([]);
  expect(textOf('.npmrc')).toMatch(/^ignore-scripts=true$/m);
  expect(textOf('.ci/run')).toContain('npm ci --ignore-scripts');
});
