import { expect, it } from 'vitest';
import type { Rig } from '../../src/analysis/report';
import { Refusal } from '../../src/image/notice';
import { troubleSentence } from '../../src/state/explainFailure';
import { createPhotoStore } from '../../src/state/photoStore';
import { heldAnalysis, settled } from '../helpers/heldAnalysis';
import { inventedReport } from '../helpers/inventedReport';
import { inventedRig } from '../helpers/inventedRig';

function openStore(common: { ballMm: number | null; rig: Rig | null } = { ballMm: 16, rig: null }) {
  const held = heldAnalysis();
  const store = createPhotoStore({
    analyze: held.analyze,
    commonOptions: () => common,
  });
  const add = (...names: string[]) =>
    store.getState().add(names.map((name) => ({ name, file: new Blob([name]) })));
  const statuses = () => store.getState().photos.map(({ status }) => status);
  const shown = () => store.getState().photos.find(({ id }) => id === store.getState().currentId);
  return { calls: held.calls, store, add, statuses, shown };
}

it('measures one photo at a time, in the order they came', async () => {
  const { calls, add, statuses } = openStore();
  add('a', 'b');
  expect(statuses()).toEqual(['measuring', 'waiting']);
  calls[0]?.resolve(inventedReport(3));
  await settled();
  expect(statuses()).toEqual(['measured', 'measuring']);
  calls[1]?.resolve(inventedReport(1));
  await settled();
  expect(statuses()).toEqual(['measured', 'measured']);
  expect(calls).toHaveLength(2);
});

it('measures the photo being looked at before the others that wait', async () => {
  const { calls, store, add } = openStore();
  add('a', 'b', 'c');
  store.getState().show(3);
  calls[0]?.resolve(inventedReport(1));
  await settled();
  expect(await calls[1]?.file.text()).toBe('c');
});

it('shows how far the analysis is', () => {
  const { calls, add, shown } = openStore();
  add('a');
  calls[0]?.onProgress('flaws', 0.25);
  expect(shown()?.progress).toEqual({ stage: 'flaws', share: 0.25 });
  const found = { widthPx: 3, heightPx: 2, outlines: [] };
  calls[0]?.onProgress('highlights', 0, found);
  calls[0]?.onProgress('highlights', 0.5);
  expect(shown()?.progress).toEqual({ stage: 'highlights', share: 0.5, found });
});

it('says why a photo was refused and goes on with the next', async () => {
  const { calls, add, statuses, shown } = openStore();
  add('a', 'b');
  calls[0]?.reject(new Refusal('no-stone'));
  await settled();
  expect(statuses()).toEqual(['refused', 'measuring']);
  expect(shown()).toMatchObject({
    code: 'no-stone',
    progress: null,
  });
  expect(troubleSentence(shown()!)).toBe(new Refusal('no-stone').message);
});

it('says that measuring failed when the analysis breaks', async () => {
  const { calls, add, shown } = openStore();
  add('a');
  calls[0]?.reject(new Error('The worker is gone.'));
  await settled();
  expect(shown()).toMatchObject({ status: 'failed', code: null });
  expect(troubleSentence(shown()!)).toContain('The worker is gone.');
});

it('stops the photo under way on request and tells the analysis so', async () => {
  const { calls, store, add, statuses } = openStore();
  add('a', 'b');
  store.getState().cancel();
  await settled();
  expect(calls[0]?.signal.aborted).toBe(true);
  expect(statuses()).toEqual(['cancelled', 'measuring']);
});

it('measures again with the place of the ball, also while the first try is still under way', async () => {
  const { calls, store, add, statuses, shown } = openStore();
  add('a');
  expect(calls[0]?.options).toEqual({ ballMm: 16, rig: null, ballAt: null });
  store.getState().pointAtBall([120, 340]);
  await settled();
  expect(calls[0]?.signal.aborted).toBe(true);
  expect(calls[1]?.options.ballAt).toEqual([120, 340]);
  calls[1]?.resolve(inventedReport(2));
  await settled();
  expect(statuses()).toEqual(['measured']);
  expect(shown()?.report?.stones).toHaveLength(2);
});

it('keeps the place of the ball when the photo is measured once more', async () => {
  const { calls, store, add } = openStore();
  add('a');
  store.getState().pointAtBall([1, 2]);
  await settled();
  store.getState().measureAgain();
  await settled();
  expect(calls.at(-1)?.options.ballAt).toEqual([1, 2]);
});

it('measures again with the shots of the scene that were added, and without them when they are dropped', async () => {
  const { calls, store, add, statuses, shown } = openStore();
  add('a');
  calls[0]?.resolve(inventedReport(2));
  await settled();
  store.getState().addShots([new Blob(['darker'])]);
  expect(statuses()).toEqual(['measuring']);
  expect(await calls[1]?.file.text()).toBe('a');
  expect(await calls[1]?.shots[0]?.text()).toBe('darker');
  store.getState().addShots([new Blob(['darker still'])]);
  await settled();
  expect(calls[1]?.signal.aborted).toBe(true);
  expect(calls[2]?.shots).toHaveLength(2);
  calls[2]?.reject(new Refusal('exposures-differ-in-scene'));
  await settled();
  expect(shown()?.code).toBe('exposures-differ-in-scene');
  store.getState().dropShots();
  await settled();
  expect(calls.at(-1)?.shots).toEqual([]);
});

it('does not measure again when no shot was added', () => {
  const { calls, store, add } = openStore();
  add('a');
  store.getState().addShots([]);
  expect(calls).toHaveLength(1);
  expect(calls[0]?.signal.aborted).toBe(false);
});

it('measures the sample by its own ball, and photos of the person by what the person said', async () => {
  const rig = inventedRig();
  const { calls, store, add } = openStore({ ballMm: null, rig });
  store.getState().add([{ name: 'sample', file: new Blob(), sample: true }]);
  calls[0]?.resolve(inventedReport(1));
  await settled();
  add('own');
  expect(calls[0]?.options).toEqual({ ballMm: 16, rig: null, ballAt: null });
  expect(calls[1]?.options).toEqual({ ballMm: null, rig, ballAt: null });
});

it('forgets which stone was looked at when another photo is shown', () => {
  const { store, add } = openStore();
  add('a');
  store.getState().selectStone(4);
  add('b');
  expect(store.getState()).toMatchObject({ currentId: 2, selectedStone: null });
});

it('does nothing when no photo is added', () => {
  const { calls, store, add } = openStore();
  add();
  expect(store.getState().currentId).toBeNull();
  expect(calls).toHaveLength(0);
});
