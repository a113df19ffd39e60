import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readExposure } from '../../src/image/readExposure';

/** A small JPEG written by libvips with those Exif entries. */
async function jpegWith(exif: Record<string, string>): Promise<Uint8Array> {
  const plain = sharp({ create: { width: 8, height: 8, channels: 3, background: 'gray' } });
  return new Uint8Array(await plain.withExif({ IFD2: exif }).jpeg().toBuffer());
}

it('reads time, aperture and sensitivity that a camera wrote', async () => {
  const bytes = await jpegWith({ ExposureTime: '1/50', FNumber: '2/1', ISOSpeedRatings: '100' });
  expect(await readExposure(bytes)).toBeCloseTo(0.5, 9);
});

it('tells two stops apart', async () => {
  const shots = await Promise.all(
    ['1/30', '1/120'].map((ExposureTime) =>
      jpegWith({ ExposureTime, FNumber: '18/10', ISOSpeedRatings: '64' }),
    ),
  );
  const [bright, dark] = await Promise.all(shots.map(readExposure));
  expect((bright ?? 0) / (dark ?? 1)).toBeCloseTo(4, 9);
});

it('has none where one of the three is missing or nothing', async () => {
  expect(await readExposure(await jpegWith({ ExposureTime: '1/50', FNumber: '2/1' }))).toBeNull();
  const nothing = { ExposureTime: '0/1', FNumber: '2/1', ISOSpeedRatings: '100' };
  expect(await readExposure(await jpegWith(nothing))).toBeNull();
  expect(await readExposure(new Uint8Array([1, 2, 3]))).toBeNull();
});
