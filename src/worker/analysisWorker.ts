import { analyzeShots } from '../analysis/analyzeShots';
import type { FoundStones, Stage } from '../analysis/options';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { openEngines } from '../vision/openEngines';
import { answerPreview } from './answerPreview';
import { decodePhoto } from './decodePhoto';
import { openGlossPool } from './glossPool';
import type { Answer, Order } from './messages';
import { nextTurn } from './nextTurn';

/**
 * The module worker: decodes and measures one photo at a time, and can be told to stop in between. Another one of the
 * same file looks at the frames of the live picture.
 */

const glossLanes = openGlossPool(navigator.hardwareConcurrency);
let isStopping = false;

addEventListener('message', async ({ data: order }: MessageEvent<Order>) => {
  if (order.kind === 'stop') {
    isStopping = true;
    return;
  }
  if (order.kind === 'preview' || order.kind === 'sharpness') {
    self.postMessage(await answerPreview(order));
    return;
  }
  isStopping = false;
  const ended = await analyze(order).catch(answerOfError);
  // What was begun ahead is not wanted any more; the next photo need not wait for it.
  if (ended.kind !== 'done') glossLanes?.drop();
  answer(ended);
});

async function analyze({ files, options, lampMoved }: Extract<Order, { kind: 'analyze' }>): Promise<Answer> {
  await watch('decode', 0);
  const [engines, photo] = await Promise.all([openEngines(), decodePhoto(files[0])]);
  const shots: [Photo, ...Photo[]] = [photo];
  for (const file of files.slice(1)) shots.push(await decodePhoto(file));
  const moved = lampMoved && (await decodePhoto(lampMoved));
  await watch('decode', shots.length > 1 ? 0.4 : 1);
  return {
    kind: 'done',
    report: await analyzeShots(shots, options, { ...engines, glossLanes }, watch, moved),
  };
}

async function watch(stage: Stage, share: number, found?: FoundStones): Promise<void> {
  answer({ kind: 'progress', stage, share, ...(found ? { found } : {}) });
  await nextTurn();
  if (isStopping) throw new DOMException('The analysis was stopped.', 'AbortError');
}

function answerOfError(error: unknown): Answer {
  if (error instanceof Refusal) return { kind: 'refused', code: error.code };
  if (error instanceof DOMException && error.name === 'AbortError') return { kind: 'stopped' };
  return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
}

function answer(message: Answer): void {
  self.postMessage(message);
}
