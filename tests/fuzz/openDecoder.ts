import { type ChildProcess, fork } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { DecodeEnd } from './decodeChild';

const repository = fileURLToPath(new URL('../..', import.meta.url));

/** The command's decoder in a process of its own. */
export interface Decoder {
  /** Decodes a file; a process that dies of it, or takes longer than `mostMs`, is an end too, and the next file gets a new one. */
  decode(
    bytes: Uint8Array,
    mostMs: number,
  ): Promise<{ kind: DecodeEnd['kind'] | 'died' | 'hung'; said: string }>;
  close(): Promise<void>;
}

export async function openDecoder(): Promise<Decoder> {
  const folder = await mkdtemp(join(tmpdir(), 'glintgrade-fuzz-'));
  const path = join(folder, 'photo');
  let child: ChildProcess | null = null;
  const end = () => {
    child?.kill('SIGKILL');
    child = null;
  };
  return {
    async decode(bytes, mostMs) {
      await writeFile(path, bytes);
      child ??= await startChild();
      const answer = await answerOf(child, path, mostMs);
      if (answer.kind === 'died' || answer.kind === 'hung') end();
      return answer;
    },
    async close() {
      end();
      await rm(folder, { recursive: true });
    },
  };
}

async function startChild(): Promise<ChildProcess> {
  const child = fork(join(repository, '.config/run.mjs'), [join(repository, 'tests/fuzz/decodeChild.ts')]);
  await new Promise<void>((resolve, reject) => {
    child.once('message', () => resolve());
    child.once('exit', (code) => reject(new Error(`The decoder did not start (${code}).`)));
  });
  return child;
}

function answerOf(child: ChildProcess, path: string, mostMs: number): ReturnType<Decoder['decode']> {
  return new Promise((resolve) => {
    const finish = (answer: Awaited<ReturnType<Decoder['decode']>>) => {
      clearTimeout(late);
      child.off('message', onMessage);
      child.off('exit', onExit);
      resolve(answer);
    };
    const onMessage = (answer: unknown) => finish(answer as DecodeEnd);
    const onExit = (code: number | null, signal: string | null) =>
      finish({ kind: 'died', said: `exit ${code ?? signal}` });
    const late = setTimeout(() => finish({ kind: 'hung', said: `no answer in ${mostMs} ms` }), mostMs);
    child.once('message', onMessage);
    child.once('exit', onExit);
    child.send(path);
  });
}
