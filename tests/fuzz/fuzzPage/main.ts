import { Refusal } from '../../../src/image/notice';
import { type AnalysisClient, openAnalysis } from '../../../src/worker/analysisClient';
import { decodePhoto } from '../../../src/worker/decodePhoto';

/** How the page dealt with one file. */
export interface PageEnd {
  readonly kind: 'graded' | 'refused' | 'failed' | 'hung';
  /** A refusal's code; else what went wrong, or the report as JSON. */
  readonly said: string;
  readonly ms: number;
}

declare global {
  interface Window {
    /** Grades a file, given as base64, as the page does; after `mostMs` it counts as hung. */
    grade: (file: string, mostMs: number) => Promise<PageEnd>;
    /** Most levels of 255 by which two files, given as base64, differ once decoded; null where their sizes differ. */
    difference: (one: string, other: string) => Promise<number | null>;
    /** Bytes that the page and its workers hold, WebAssembly included. */
    memory: () => Promise<number>;
  }
  interface Performance {
    measureUserAgentSpecificMemory(): Promise<{ readonly bytes: number }>;
  }
}

let client: AnalysisClient = openAnalysis();

const blobOf = (file: string) => new Blob([Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0))]);

async function grade(file: string, mostMs: number): Promise<PageEnd> {
  const photo = blobOf(file);
  const start = performance.now();
  const stop = AbortSignal.timeout(mostMs);
  const end = await client.analyze([photo], { ballMm: 16, ballAt: null, rig: null }, { signal: stop }).then(
    ({ report }) => ({ kind: 'graded', said: JSON.stringify(report) }) as const,
    (error: unknown) => {
      if (error instanceof Refusal) return { kind: 'refused', said: error.code } as const;
      return { kind: stop.aborted ? 'hung' : 'failed', said: String(error) } as const;
    },
  );
  if (end.kind === 'hung') {
    client.close();
    client = openAnalysis();
  }
  return { ...end, ms: performance.now() - start };
}

async function difference(one: string, other: string): Promise<number | null> {
  const [a, b] = [await decodePhoto(blobOf(one)), await decodePhoto(blobOf(other))];
  if (a.widthPx !== b.widthPx || a.heightPx !== b.heightPx) return null;
  return a.rgba.reduce((most, level, i) => Math.max(most, Math.abs(level - b.rgba[i]!)), 0);
}

const memory = async () => (await performance.measureUserAgentSpecificMemory()).bytes;

Object.assign(window, { grade, difference, memory });
