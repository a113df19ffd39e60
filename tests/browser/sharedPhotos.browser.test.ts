import { expect, it } from 'vitest';
import { keepSharedPhotos, takeSharedPhotos } from '../../src/offline/sharedPhotos';

const BASE = 'https://stones.example/app/';

it('hands shared photos over with name, type and content, in their order, and only once', async () => {
  const form = new FormData();
  form.append('photos', new File(['first'], 'Schälchen 1.heic', { type: 'image/heic' }));
  form.append('photos', new File(['second'], 'tray.jpg', { type: 'image/jpeg' }));
  form.append('title', 'not a photo');
  expect(await keepSharedPhotos(form, BASE)).toBe(`${BASE}?shared`);
  const files = await takeSharedPhotos();
  expect(files.map(({ name, type }) => [name, type])).toEqual([
    ['Schälchen 1.heic', 'image/heic'],
    ['tray.jpg', 'image/jpeg'],
  ]);
  expect(await Promise.all(files.map((file) => file.text()))).toEqual(['first', 'second']);
  expect(await takeSharedPhotos()).toEqual([]);
});

it('gives a photo to one of two windows that ask at once', async () => {
  const form = new FormData();
  form.append('photos', new File(['one'], 'one.jpg', { type: 'image/jpeg' }));
  await keepSharedPhotos(form, BASE);
  const [here, there] = await Promise.all([takeSharedPhotos(), takeSharedPhotos()]);
  expect([...here, ...there].map(({ name }) => name)).toEqual(['one.jpg']);
});

it('takes the question off the address, and nothing else', async () => {
  const before = location.href;
  const asked = new URL(before);
  asked.searchParams.set('shared', '');
  history.replaceState(null, '', asked);
  await takeSharedPhotos();
  expect(new URL(location.href).searchParams.has('shared')).toBe(false);
  expect(location.pathname).toBe(new URL(before).pathname);
  history.replaceState(null, '', before);
});
