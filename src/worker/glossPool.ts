import { type GlossLanes, type StoneGloss, stoneGloss } from '../analysis/stoneGloss';
import type { GlossAnswer, GlossOrder } from './messages';

/** Workers at most; each stone waits for one, so that more would only wait for each other's memory. */
const MOST_WORKERS = 4;
/** Stones handed to each worker at once: the next one is there when the first is done. */
const STONES_EACH = 2;

interface Lane {
  readonly worker: Worker;
  readonly waiting: Map<number, (answer: GlossAnswer | null) => void>;
  /** Once its worker could not be loaded. */
  isBroken: boolean;
}

export interface GlossPool extends GlossLanes {
  /** Lets go of all that was asked for and is not read yet; what waits for it waits forever. */
  drop(): void;
}

/**
 * Reads the gloss of several stones at once, in workers of their own that need no engine: the figures are those of
 * `stoneGloss`. Workers are started with the first stone and kept.
 *
 * @param cores - Of this device; with one everything is read where it is asked for.
 * @returns Null with one core, or where workers cannot start workers.
 */
export function openGlossPool(cores: number, startWorker: () => Worker = startGlossWorker): GlossPool | null {
  if (!(cores > 1) || typeof Worker === 'undefined') return null;
  const count = Math.min(MOST_WORKERS, cores);
  let lanes: Lane[] | null = null;
  let lastId = 0;
  return {
    ahead: count * STONES_EACH,
    async read(crop, light): Promise<StoneGloss> {
      lanes ??= Array.from({ length: count }, () => openLane(startWorker()));
      const lane = leastBusy(lanes.filter(({ isBroken }) => !isBroken));
      if (!lane) return stoneGloss(crop, light);
      const { stone, mask, factor } = crop;
      const order: GlossOrder = {
        id: ++lastId,
        crop: { stone, mask, factor, corner: crop.toPhoto(0, 0) },
        light,
      };
      const answer = await new Promise<GlossAnswer | null>((resolve) => {
        lane.waiting.set(order.id, resolve);
        lane.worker.postMessage(order);
      });
      // What breaks there is read here, where its error is told.
      return answer?.gloss ?? stoneGloss(crop, light);
    },
    drop() {
      for (const { worker } of lanes ?? []) worker.terminate();
      lanes = null;
    },
  };
}

function openLane(worker: Worker): Lane {
  const waiting: Lane['waiting'] = new Map();
  const lane: Lane = { worker, waiting, isBroken: false };
  worker.onmessage = ({ data }: MessageEvent<GlossAnswer>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    lane.isBroken = true;
    for (const resolve of waiting.values()) resolve(null);
    waiting.clear();
  };
  return lane;
}

const leastBusy = (lanes: readonly Lane[]): Lane | undefined =>
  [...lanes].sort((a, b) => a.waiting.size - b.waiting.size)[0];

const startGlossWorker = () =>
  new Worker(new URL('./glossWorker.ts', import.meta.url), { type: 'module', name: 'gloss' });
