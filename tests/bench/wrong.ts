/**
 * Scores what is said of photos that show no stones, or stones that cannot be judged:
 * `npm run bench:wrong -- [--set development|test] [--only NAME] [--variant ball|bare|rig] [--pictures FOLDER]`.
 * The exit status is 1 when anything that is no stone well photographed may go on or is called finished.
 */
import { parseArgs } from 'node:util';
import { openEngines } from '../../src/vision/openEngines';
import { drawFindings } from './drawFindings';
import {
  type JudgedPhoto,
  type JudgedThing,
  judgeWrong,
  rigOfSet,
  WRONG_SETS,
  WRONG_VARIANTS,
  wrongPhoto,
  wrongTruth,
} from './wrongPhotos';

const { values } = parseArgs({
  options: {
    set: { type: 'string' },
    only: { type: 'string', multiple: true },
    variant: { type: 'string', multiple: true },
    pictures: { type: 'string' },
  },
});
const engines = await openEngines();
let anyPass = false;
for (const set of WRONG_SETS.filter((one) => (values.set ?? one) === one)) {
  const totals = {
    photos: 0,
    refused: 0,
    marked: 0,
    things: 0,
    letPass: 0,
    real: 0,
    doubted: 0,
  };
  const rig = await rigOfSet(set, engines);
  for (const name of Object.keys(wrongTruth()).filter((one) => values.only?.includes(one) ?? true)) {
    for (const variant of WRONG_VARIANTS.filter((one) => values.variant?.includes(one) ?? true)) {
      const photo = await wrongPhoto(set, name, variant);
      if (!photo) continue;
      const judged = await judgeWrong(photo, { set, name, rig: variant === 'rig' ? rig : null }, engines);
      print(`${set} ${name} (${variant})`, judged);
      const { report } = judged;
      if (report && values.pictures) {
        const bare = { photo: `${set}-${name}-${variant}.jpg`, mmPerPx: report.mmPerPx, stones: [] };
        await drawFindings(photo, report, bare, values.pictures);
      }
      if (name !== 'good') {
        totals.photos++;
        if (judged.refused) totals.refused++;
        else if (judged.isMarked) totals.marked++;
      }
      const others = judged.things.filter(({ isReal }) => !isReal);
      totals.things += others.length;
      totals.letPass += judged.letPass.length;
      const real = judged.things.filter(({ isReal }) => isReal);
      totals.real += real.length;
      totals.doubted += real.filter(({ unlike }) => unlike !== null).length;
    }
  }
  anyPass ||= totals.letPass > 0;
  const { photos, refused, marked, things, letPass, doubted } = totals;
  console.log(
    `\n${set}: ${photos} photos, ${refused} refused, ${marked} warned of as they must, ${photos - refused - marked} neither; ${things} things that are no stone well photographed, ${letPass} let pass or called finished; ${doubted} of ${totals.real} stones well photographed doubted\n`,
  );
}
process.exitCode = anyPass ? 1 : 0;

function print(title: string, { refused, warnings, things, letPass, isMarked }: JudgedPhoto): void {
  const mark = isMarked ? '' : '  NOT MARKED';
  console.log(`${title}: ${refused ? `refused, ${refused}` : `warnings [${warnings.join(', ')}]`}${mark}`);
  for (const thing of things) console.log(`    ${line(thing)}${letPass.includes(thing) ? '  LET PASS' : ''}`);
}

function line({ id, center, isReal, actions, unlike }: JudgedThing): string {
  const at = center.map((value) => Math.round(value)).join(',');
  const verdicts = Object.entries(actions).map(([step, action]) => `${step} ${action}`);
  return `${id} at ${at} ${isReal ? 'stone' : '     '} ${verdicts.join(', ')}${unlike ? ` [${unlike}]` : ''}`;
}
