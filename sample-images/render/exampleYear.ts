/**
 * Makes the example year that the page shows: `node .config/run.mjs sample-images/render/exampleYear.ts PHOTOS OUT.zip`.
 * PHOTOS is the folder that year.py filled. Every photo is measured and graded as the page would; names, runs and
 * decisions are invented, in a setting of our own.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { writeBundle } from '../../src/bundle/writeBundle';
import { batchFromPhotos, type PhotoToKeep } from '../../src/cli/batchFromPhotos';
import { gradeFile } from '../../src/cli/gradeFile';
import { keptFile } from '../../src/cli/keptFile';
import { momentOf } from '../../src/cli/photosByMoment';
import type { MaterialName } from '../../src/grading/materials';
import type { Step } from '../../src/grading/steps';
import { type BatchRecords, batchHistory } from '../../src/history/batchHistory';
import type { KeptPhoto } from '../../src/journal/openJournal';
import { recordId } from '../../src/journal/recordId';
import type { JournalRecord, MachineRecord, RunRecord, StoneRecord } from '../../src/journal/records';
import { verdicts } from '../../src/texts/english/verdicts';
import { openEngines } from '../../src/vision/openEngines';

const STEPS_OF_CHECKS: readonly Step[] = [
  ...Array.from({ length: 6 }, () => 'coarse' as const),
  ...(['medium', 'fine', 'prepolish', 'polish', 'polish'] as const),
];
/** What the stones are, by the color of their middle at the first check: L*, a*, b* nearest. */
const KINDS: readonly { material: MaterialName; source: string; lab: readonly [number, number, number] }[] = [
  { material: 'agate', source: 'the gravel bank', lab: [64, 27, 27] },
  { material: 'rhodonite', source: 'a swap', lab: [57, 12, 3] },
  { material: 'jasper', source: 'the old quarry', lab: [56, 27, 16] },
  { material: 'jasper', source: 'the old quarry', lab: [75, 8, 39] },
  { material: 'nephrite', source: 'a swap', lab: [55, -20, 10] },
  { material: 'agate', source: 'the gravel bank', lab: [62, 7, 15] },
  { material: 'obsidian', source: 'a swap', lab: [42, 0, 0] },
];
const FAVORITE = 'obsidian';

const [folder, out] = process.argv.slice(2);
if (!folder || !out) throw new Error('Name the folder of photos and the file to write.');
const engines = await openEngines();
const photos: PhotoToKeep[] = [];
const pictures: KeptPhoto[] = [];
for (const [k, step] of STEPS_OF_CHECKS.entries()) {
  const path = join(folder, `check-${String(k).padStart(2, '0')}.jpg`);
  const options = { ballMm: 16, ballAt: null, rig: null, step, material: null, lampMovedFile: null } as const;
  const { report, grades } = await gradeFile([path], options, engines);
  if (!report || !grades) throw new Error(`${path} was refused.`);
  const picture = await keptFile(path);
  pictures.push(picture);
  photos.push({
    report,
    grades,
    day: (await momentOf(path)).slice(0, 10),
    step,
    material: null,
    photo: picture.key,
  });
  console.log(path, step, report.stones.length);
}

const barrel: MachineRecord = {
  ...({ kind: 'machine', id: recordId(), name: 'The red barrel', type: 'rotary', capacityKg: 1.4 } as const),
};
const bowl: MachineRecord = {
  ...({ kind: 'machine', id: recordId(), name: 'The bowl', type: 'vibratory', capacityKg: 4.5 } as const),
};
const measured = batchFromPhotos(photos, 'A year of brook pebbles', 0);
const stones = measured.stones.map((stone) => said(stone, measured));
const runs = runsOf(measured);
const batch = { ...measured.batch, machine: barrel.id, isOver: true, startedOn: '2025-10-04' };
const decisions = decisionsOf(measured);
const records: JournalRecord[] = [barrel, bowl, batch, ...stones, ...runs];
records.push(...measured.checks, ...measured.identities, ...decisions);
const bundle = await writeBundle({ records, photos: pictures });
await writeFile(out, new Uint8Array(await bundle.arrayBuffer()));
console.log(`${out}: ${(bundle.size / 1e6).toFixed(2)} MB`);

/** A stone with its kind. */
function said(stone: StoneRecord, records: BatchRecords): StoneRecord {
  const history = batchHistory(records).stones.find((one) => one.stone.id === stone.id);
  const colors = history?.checks[0]?.faces[0].stone.look?.colors ?? [];
  // The middle of five quantiles of each axis.
  const lab = [colors[2]!, colors[7]!, colors[12]!];
  const far = (kind: (typeof KINDS)[number]) => Math.hypot(...kind.lab.map((value, k) => value - lab[k]!));
  const kind = KINDS.reduce((best, one) => (far(one) < far(best) ? one : best));
  console.log(stone.name, lab, kind.material);
  return { ...stone, material: kind.material, source: kind.source, isFavorite: kind.material === FAVORITE };
}

/** From each check to the next the batch was run in the step that the next one came out of. */
function runsOf({ batch, checks }: BatchRecords): RunRecord[] {
  return checks.map((check, k) => {
    const startedOn = k === 0 ? '2025-10-04' : checks[k - 1]!.day;
    const machine = check.step === 'coarse' ? barrel.id : bowl.id;
    const about = { batch: batch.id, machine, step: check.step, startedOn, endedOn: check.day };
    return {
      kind: 'run',
      id: recordId(),
      ...about,
      charge: `${verdicts.grits[check.step]}: ${verdicts.charges[check.step]}`,
    };
  });
}

/** At the last check in coarse all went on but the stone with the long fracture, which was set aside. */
function decisionsOf(records: BatchRecords) {
  const { stones, checks } = batchHistory(records);
  const last = checks.findLast(({ check }) => check.step === 'coarse')!.check;
  return stones.flatMap(({ stone, checks: seen }) => {
    const here = seen.find(({ check }) => check.id === last.id);
    if (!here) return [];
    const goesOn = seen.at(-1)!.check.step !== 'coarse';
    const about = { batch: records.batch.id, check: last.id, stone: stone.id };
    return [
      { kind: 'decision', id: recordId(), ...about, action: goesOn ? 'advance' : 'set-aside' } as const,
    ];
  });
}
