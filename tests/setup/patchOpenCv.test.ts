import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { patchOpenCv } from '../../.config/plugins/patchOpenCv';

const source = readFileSync(createRequire(import.meta.url).resolve('opencv-wasm/opencv.js'), 'utf8');
const glue = readFileSync(new URL('../../.config/plugins/openCvGlue.js', import.meta.url), 'utf8');

it('makes a module that builds no code from text and reaches for nothing of Node', () => {
  const patched = patchOpenCv(source, glue);
  expect(patched).toMatch(/^export default function ?\(cv\) \{/);
  expect(patched).not.toMatch(/new Function\b|\beval\(|require\(/);
});

it('does not depend on the line ends of the package', () => {
  expect(patchOpenCv(source.replaceAll('\n', '\r\n'), glue)).toBe(patchOpenCv(source, glue));
});

it.each([
  { gone: 'function(cv) {', says: 'its factory was not found' },
  { gone: 'function makeDynCaller(', says: 'function makeDynCaller was found 0 times, not once' },
  { gone: 'Module["then"] = function(func) {', says: 'was found 0 times, not once' },
])('stops the build when a new package lacks "$gone"', ({ gone, says }) => {
  expect(() => patchOpenCv(source.replace(gone, '/* changed */'), glue)).toThrow(says);
});

it('stops the build when a new package builds code in another place', () => {
  const changed = source.replace(
    'var moduleOverrides = {};',
    'var moduleOverrides = new Function("return {}")();',
  );
  expect(() => patchOpenCv(changed, glue)).toThrow('"new Function" is left in its glue');
});
