import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const repository = fileURLToPath(new URL('../..', import.meta.url));
const run = promisify(execFile);

export interface Ended {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the grading command as a process of its own, as another program would. */
export async function runGrade(...words: string[]): Promise<Ended> {
  const line = ['.config/run.mjs', 'src/cli/grade.ts', ...words];
  const settings = { cwd: repository, maxBuffer: 64e6 };
  try {
    return { code: 0, ...(await run(process.execPath, line, settings)) };
  } catch (error) {
    const { code, stdout, stderr } = error as Ended;
    return { code, stdout, stderr };
  }
}
