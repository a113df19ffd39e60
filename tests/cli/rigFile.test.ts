import { expect, it } from 'vitest';
import { readRig, writeRig } from '../../src/cli/rigFile';
import { inventedReport } from '../helpers/inventedReport';
import { inventedRig } from '../helpers/inventedRig';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();

it('gives back what it saved', async () => {
  const { rig } = inventedReport();
  const path = await folder.save('rig.json', '');
  await writeRig(path, rig);
  expect(await readRig(path)).toEqual(rig);
});

it('keeps the scene, and still reads a rig saved without one', async () => {
  const rig = inventedRig();
  const path = await folder.save('rig.json', '');
  await writeRig(path, rig);
  expect(await readRig(path)).toEqual(rig);
  const { scene: _, lampColor: __, ...old } = rig;
  const before = await folder.save('old.json', JSON.stringify({ schema: 1, rig: old }));
  expect(await readRig(before)).toEqual(old);
});

it('refuses a rig whose scene is broken', async () => {
  const rig = inventedRig();
  for (const scene of [{ ...rig.scene, tray: [] }, { ...rig.scene, widthPx: 'wide' }, {}]) {
    const path = await folder.save('broken.json', JSON.stringify({ schema: 1, rig: { ...rig, scene } }));
    await expect(readRig(path)).rejects.toThrow('holds no rig');
  }
});

it('refuses a missing file, another file and a rig without a lamp', async () => {
  await expect(readRig('nowhere.json')).rejects.toThrow('There is no rig file "nowhere.json".');
  const dark = JSON.stringify({ schema: 1, rig: { ...inventedReport().rig, lampRadiance: 0 } });
  for (const text of ['not JSON', '{"schema":1}', dark]) {
    const path = await folder.save('other.json', text);
    await expect(readRig(path)).rejects.toThrow(
      'holds no rig: save one with --save-rig from a photo with the ball.',
    );
  }
});
