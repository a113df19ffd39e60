import { Tensor } from 'onnxruntime-web/wasm';
import modelUrl from '../../models/stone-flaws.onnx?url';
import { openOnnx } from './openOnnx';

/** Classes of the network in the order of its output; see models/README.md. */
export const FLAW_CLASSES = ['sound', 'pit', 'fracture', 'chip', 'scratch', 'frosting'] as const;
/** Planes of the network's input. */
export const FLAW_PLANES = 6;
/** Scale of the network's input, pixels per mm; its output has half as many. */
export const FLAW_PX_PER_MM = 12;
/** Rows and columns of the input are multiples of this. */
export const FLAW_STEP_PX = 32;

/** The flaw network, ready to run. */
export interface FlawNet {
  /**
   * Shares of the six classes.
   *
   * @param planes - 6 × rows × columns, as models/README.md tells.
   * @param rows - Multiple of 32.
   * @param columns - Multiple of 32.
   * @returns 6 × rows/2 × columns/2, each place adding up to 1.
   * @throws Error if the sizes do not fit.
   */
  shares(planes: Float32Array, rows: number, columns: number): Promise<Float32Array>;
}

let opened: Promise<FlawNet> | undefined;

/**
 * Opens the flaw network of this program, once.
 *
 * @throws Error if engine or network cannot be loaded; the next call tries again.
 */
export function openFlawNet(): Promise<FlawNet> {
  opened ??= open().catch((error: unknown) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

async function open(): Promise<FlawNet> {
  const session = await openOnnx(modelUrl);
  return {
    shares: async (planes, rows, columns) => {
      const input = new Tensor('float32', planes, [1, FLAW_PLANES, rows, columns]);
      const { shares } = await session.run({ planes: input });
      return shares!.data as Float32Array;
    },
  };
}
