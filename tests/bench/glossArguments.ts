import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

/** What the person wants scored and written. */
export interface GlossArguments {
  /** Folder of truth files and developed photos; null when saved rows are scored. */
  readonly folder: string | null;
  readonly part: string | null;
  readonly only: string | null;
  readonly variants: readonly string[] | null;
  readonly crops: string | null;
  readonly json: string | null;
  readonly compare: string | null;
  readonly saved: string | null;
  readonly processes: number;
}

export const USAGE = `npm run bench:gloss -- FOLDER [options]

FOLDER holds SCENE.json and SCENE.VARIANT.jpg, or one folder of them per part.
  --part NAME       the part FOLDER/NAME: development, test, turned or faults
  --only TEXT       only scenes whose name holds TEXT
  --variants A,B    only these variants, such as clean,blur-1
  --crops FOLDER    writes an enlarged crop of each of the worst stones
  --json FILE       saves every row
  --compare FILE    says what got better or worse since the rows of FILE were saved
  --saved FILE      scores the rows of FILE again, without FOLDER
  --processes N     photos measured at a time (2)`;

/**
 * Reads the command line.
 *
 * @throws Error that says what is wrong with it.
 */
export function glossArguments(words: readonly string[]): GlossArguments {
  const text = { type: 'string' } as const;
  const { values, positionals } = parseArgs({
    args: [...words],
    allowPositionals: true,
    options: {
      part: text,
      only: text,
      variants: text,
      crops: text,
      json: text,
      compare: text,
      saved: text,
      processes: { ...text, default: '2' },
    },
  });
  const [folder, ...more] = positionals;
  const { saved = null, part = null } = values;
  if (more.length > 0) throw new Error(`Name one folder, not also ${more.join(', ')}.`);
  if ((folder === undefined) === (saved === null)) throw new Error('Name a folder, or saved rows.');
  const processes = Number(values.processes);
  if (!(Number.isInteger(processes) && processes >= 1))
    throw new Error('--processes takes a whole number from 1.');
  return {
    folder: folder === undefined ? null : partOf(folder, part),
    part,
    only: values.only ?? null,
    variants: values.variants?.split(',') ?? null,
    crops: values.crops ?? null,
    json: values.json ?? null,
    compare: values.compare ?? null,
    saved,
    processes,
  };
}

/** Development and test part are never mixed, so a folder of parts needs one of them named. */
function partOf(folder: string, part: string | null): string {
  const chosen = part === null ? folder : join(folder, part);
  if (!existsSync(chosen)) throw new Error(`There is no folder ${chosen}.`);
  if (part !== null) return chosen;
  const entries = readdirSync(folder, { withFileTypes: true });
  if (entries.some(({ name }) => name.endsWith('.json'))) return folder;
  const parts = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
  throw new Error(`${folder} holds no truth files; name a part of it: ${parts.join(', ') || 'it has none'}.`);
}
