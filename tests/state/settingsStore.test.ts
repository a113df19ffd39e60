import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { FIRST_SETTINGS } from '../../src/state/keptSettings';
import { createSettingsStore } from '../../src/state/settingsStore';
import { inventedReport } from '../helpers/inventedReport';
import { inventedRig } from '../helpers/inventedRig';

function openStorage(kept: Record<string, string> = {}) {
  const items = new Map(Object.entries(kept));
  return {
    items,
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
  };
}

it('remembers what was chosen for the next visit', () => {
  const storage = openStorage();
  const limits = { ...DEFAULT_LIMITS, coarse: { ...DEFAULT_LIMITS.coarse, maxPitsPerCm2: 3 } };
  const first = createSettingsStore(storage);
  first.getState().change({ step: 'polish', material: 'obsidian', ballMm: 20, limits, cautionsSeen: true });
  first.getState().keepRig(inventedReport(0).rig);
  first.getState().change({ noBall: true });
  const second = createSettingsStore(storage).getState();
  expect(second).toMatchObject({
    step: 'polish',
    material: 'obsidian',
    ballMm: 20,
    noBall: true,
    cautionsSeen: true,
  });
  expect(second.limits.coarse.maxPitsPerCm2).toBe(3);
  expect(second.rig).toEqual(inventedReport(0).rig);
});

it('remembers lamp and camera with the day, and what they were compared by', () => {
  const storage = openStorage();
  const { keepRig } = createSettingsStore(storage).getState();
  keepRig(inventedRig());
  const { rig, rigDay } = createSettingsStore(storage).getState();
  expect(rig).toEqual(inventedRig());
  expect(rigDay).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(Math.abs(Date.parse(rigDay ?? '') - Date.now())).toBeLessThan(2 * 24 * 3600 * 1000);
});

it('drops a broken scene but keeps the rig, and knows rigs kept before there were days and scenes', () => {
  const { scene, ...old } = inventedRig();
  const storage = openStorage();
  createSettingsStore(storage).getState().change({});
  const [key] = storage.items.keys();
  for (const rig of [old, { ...old, scene: { ...scene, tray: [1, 2] } }]) {
    const kept = openStorage({ [key ?? '']: JSON.stringify({ rig }) });
    expect(createSettingsStore(kept).getState()).toMatchObject({ rig: old, rigDay: null });
    expect(createSettingsStore(kept).getState().rig).not.toHaveProperty('scene');
  }
});

it('starts with a coarse check of a mixed tray on the first visit', () => {
  expect(createSettingsStore(openStorage()).getState()).toMatchObject(FIRST_SETTINGS);
});

it('takes nothing over that this program could not have kept', () => {
  const nonsense = JSON.stringify({
    step: 'melt',
    material: 'cheese',
    ballMm: -3,
    noBall: true,
    rig: { mmPerPx: 'wide' },
    limits: { coarse: { maxPitsPerCm2: 'many', minShareOfCeiling: 0.5 } },
    cautionsSeen: 'yes',
  });
  const storage = openStorage();
  createSettingsStore(storage).getState().change({});
  const [key] = storage.items.keys();
  expect(createSettingsStore(openStorage({ [key ?? '']: nonsense })).getState()).toMatchObject(
    FIRST_SETTINGS,
  );
  expect(createSettingsStore(openStorage({ [key ?? '']: '{broken' })).getState()).toMatchObject(
    FIRST_SETTINGS,
  );
});

it('works without a storage and with one that refuses', () => {
  const refusing = {
    getItem: () => {
      throw new DOMException('Forbidden.', 'SecurityError');
    },
    setItem: () => {
      throw new DOMException('Full.', 'QuotaExceededError');
    },
  };
  for (const storage of [null, refusing]) {
    const store = createSettingsStore(storage);
    store.getState().change({ step: 'fine' });
    expect(store.getState().step).toBe('fine');
  }
});
