import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const SCRIPT = fileURLToPath(new URL('peer.py', import.meta.url));
const run = promisify(execFile);

/** What the peer script took for one photo, ms, and the stones it found, the ball among them. */
export interface PeerTimes {
  readonly decode: number;
  readonly work: number;
  /** CPU time of the work. */
  readonly cpu: number;
  readonly stones: number;
}

/** @returns A Python that has the libraries of the peer script: that of PYTHON, or one in the usual places; else null. */
export async function findPeerPython(): Promise<string | null> {
  const { PYTHON } = process.env;
  for (const python of [...(PYTHON ? [PYTHON] : []), 'python3', '/usr/bin/python3']) {
    try {
      await run(python, ['-c', 'import cv2, numpy, scipy, skimage']);
      return python;
    } catch {
      // The next one may have them.
    }
  }
  return null;
}

/**
 * Has the peer script (peer.py) do its work on a photo, in a process of its own.
 *
 * @throws Error if it ends with one.
 */
export async function runPeer(python: string, photo: string): Promise<PeerTimes> {
  const { stdout } = await run(python, [SCRIPT, photo], { maxBuffer: 1e7 });
  const { decode_ms: decode, work_ms: work, work_cpu_ms: cpu, stones } = JSON.parse(stdout);
  return { decode, work, cpu, stones: stones.length };
}
