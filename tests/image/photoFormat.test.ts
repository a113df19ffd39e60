import { expect, it } from 'vitest';
import { photoFormat } from '../../src/image/photoFormat';
import { photoFile } from '../helpers/photoFile';

it.each(['jpeg', 'png', 'webp', 'avif'] as const)('tells a %s by its first bytes', async (format) => {
  expect(photoFormat(await photoFile(format))).toBe(format);
});

it('knows no other', async () => {
  expect(photoFormat(await photoFile('gif'))).toBeNull();
  expect(photoFormat(new Uint8Array([0xff]))).toBeNull();
});
