import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readMomentTaken } from '../../src/image/readMomentTaken';

/** A small JPEG written by libvips that says it was taken then. */
async function jpegTaken(moment: string): Promise<Uint8Array> {
  const plain = sharp({ create: { width: 8, height: 8, channels: 3, background: 'gray' } });
  return new Uint8Array(
    await plain
      .withExif({ IFD2: { DateTimeOriginal: moment } })
      .jpeg()
      .toBuffer(),
  );
}

it('reads day and time that a camera wrote, whatever zone this is', async () => {
  expect(await readMomentTaken(await jpegTaken('2026:03:09 23:59:30'))).toBe('2026-03-09T23:59:30');
});

it('has none where the camera wrote none, or one that never was', async () => {
  for (const moment of ['0000:00:00 00:00:00', '2026:02:30 12:00:00', '    :  :     :  :  ', '9 March']) {
    expect(await readMomentTaken(await jpegTaken(moment))).toBeNull();
  }
  expect(await readMomentTaken(new Uint8Array([1, 2, 3]))).toBeNull();
});
