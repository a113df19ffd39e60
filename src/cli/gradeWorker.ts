import { openEngines } from '../vision/openEngines';
import { type GradeFileOptions, gradeFile } from './gradeFile';
import type { PoolAnswer, PoolOrder } from './gradePool';
import { rigLines } from './rigLines';
import { summaryOf } from './summaryOf';
import { drawSorted } from './writePictures';

/** A process of the pool: grades the photos it is told of until whoever started it is gone. */

let settings: GradeFileOptions;
const engines = openEngines();

process.on('message', async (order: PoolOrder) => {
  try {
    answer(await follow(order));
  } catch (error) {
    answer({ kind: 'broke', message: error instanceof Error ? error.message : String(error) });
  }
});

async function follow(order: PoolOrder): Promise<PoolAnswer> {
  if (order.kind === 'settings') {
    settings = order.settings;
    await engines;
    return { kind: 'ready' };
  }
  const graded = await gradeFile([order.path], settings, await engines);
  if (order.picture !== null) await drawSorted(graded, order.picture);
  const { entry, report } = graded;
  const rig = report && settings.rig ? rigLines(report, false) : '';
  return {
    kind: 'graded',
    entry: JSON.stringify(entry),
    isRefused: entry.refused !== null,
    summary: [summaryOf(entry), rig].filter((line) => line !== '').join('\n'),
    peakBytes: 1024 * process.resourceUsage().maxRSS,
  };
}

function answer(message: PoolAnswer): void {
  process.send?.(message);
}

// The module is run for as long as it is not done: what it loads late is loaded by whoever runs it.
await new Promise((resolve) => process.on('disconnect', resolve));
process.exit();
