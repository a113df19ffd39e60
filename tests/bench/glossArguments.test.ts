import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { glossArguments } from './glossArguments';

const sampleImages = fileURLToPath(new URL('../../sample-images', import.meta.url));
const source = fileURLToPath(new URL('../../src', import.meta.url));

it('takes a folder of truth files as it is, and a part by its name', () => {
  expect(glossArguments([sampleImages]).folder).toBe(sampleImages);
  expect(glossArguments([source, '--part', 'optics']).folder).toBe(join(source, 'optics'));
});

it('splits the list of variants', () => {
  expect(glossArguments([sampleImages, '--variants', 'clean,blur-1']).variants).toEqual(['clean', 'blur-1']);
});

it('says what is missing or too much', () => {
  expect(() => glossArguments([])).toThrow('Name a folder, or saved rows.');
  expect(() => glossArguments(['a', 'b'])).toThrow('Name one folder, not also b.');
  expect(() => glossArguments([source])).toThrow('name a part of it');
  expect(() => glossArguments(['/no/such/folder'])).toThrow('There is no folder');
  expect(() => glossArguments([sampleImages, '--processes', '0'])).toThrow('whole number from 1');
});
