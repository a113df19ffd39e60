import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

/** What each room of `src` may import; `name (types)`: types only. `main.tsx` wires everything. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  texts: ['bundle', 'camera', 'compare', 'grading', 'history', 'image', 'journal', 'recipes'].map(
    (room) => `${room} (types)`,
  ),
  image: ['optics', 'texts'],
  optics: [],
  kernels: ['image (types)'],
  measure: ['image', 'kernels', 'optics'],
  vision: ['image', 'kernels'],
  grading: ['optics', 'texts'],
  analysis: ['image', 'kernels', 'optics', 'measure', 'vision', 'texts'],
  identity: ['measure'],
  history: ['grading', 'identity', 'journal (types)', 'texts'],
  recipes: ['grading', 'history', 'journal (types)', 'texts'],
  progress: [],
  journal: ['analysis (types)', 'grading', 'history', 'progress', 'texts'],
  bundle: ['history', 'grading', 'image', 'journal', 'progress', 'texts'],
  compare: ['grading', 'history', 'texts'],
  camera: ['image', 'optics', 'measure', 'analysis (types)', 'texts'],
  offline: [],
  picture: ['image', 'analysis (types)', 'grading', 'texts'],
  worker: ['image', 'analysis', 'camera', 'vision', 'texts'],
  state: [
    'image',
    'analysis (types)',
    'bundle',
    'compare',
    'grading',
    'history',
    'identity',
    'journal',
    'progress',
    'recipes',
    'texts',
    'worker',
  ],
  ui: [
    'image',
    'analysis (types)',
    'bundle',
    'camera',
    'compare',
    'grading',
    'history',
    'journal (types)',
    'offline (types)',
    'progress',
    'recipes',
    'state',
    'picture',
    'texts',
  ],
  cli: ['image', 'analysis', 'bundle', 'grading', 'history', 'journal', 'picture', 'texts', 'vision'],
};
/** Packages that only some rooms may use. */
const PACKAGES: Record<string, readonly string[]> = {
  dexie: ['journal'],
  munkres: ['identity'],
  ulid: ['journal'],
  exifr: ['image'],
  wouter: ['ui'],
  fflate: ['bundle'],
  zod: ['bundle'],
  react: ['ui'],
  'react-dom': ['ui'],
  zustand: ['state', 'ui'],
  sharp: ['cli'],
  'libheif-js': ['vision'],
  'opencv-wasm': ['vision'],
  'virtual:opencv-factory': ['vision'],
  'onnxruntime-web': ['vision'],
};
const MOST_LINES = 300;

const repository = fileURLToPath(new URL('..', import.meta.url));
const IMPORT =
  /^(?:import|export)\s+(?<what>[^'";]*?)(?:\s*from\s*)?'(?<from>[^']+)'|import\((?:\/\*.*?\*\/)?\s*'(?<lazy>[^']+)'\)|new URL\('(?<file>\.[^']+)'/gm;

interface Import {
  readonly file: string;
  readonly room: string;
  readonly from: string;
  readonly isTypesOnly: boolean;
}

function filesIn(folder: string, pattern: RegExp): string[] {
  return readdirSync(join(repository, folder), { recursive: true, encoding: 'utf8' })
    .map((file) => `${folder}/${file.split(sep).join('/')}`)
    .filter((file) => pattern.test(file));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(repository, file), 'utf8');
  const room = file.split('/')[1] ?? '';
  return [...text.matchAll(IMPORT)].map(({ groups = {} }) => {
    const what = groups.what ?? '';
    const isTypesOnly = what.startsWith('type ') || /^\{(\s*type\s[^,}]+,?)+\s*\}$/.test(what);
    return { file, room, from: groups.from ?? groups.lazy ?? groups.file ?? '', isTypesOnly };
  });
}

/** The room a relative import leads to; null when it stays at home or leaves `src` for a file by its address. */
function roomOf({ file, from }: Import): string | null {
  const target = normalize(join(dirname(file), from))
    .split(sep)
    .join('/');
  return target.startsWith('src/')
    ? (target.split('/')[1] ?? null)
    : /\?url(&inline)?$/.test(from)
      ? null
      : target;
}

function isAllowed(one: Import): boolean {
  const target = one.from.startsWith('.') ? roomOf(one) : null;
  const allowed = MAY_IMPORT[one.room] ?? [];
  if (target === null) {
    const packageName = Object.keys(PACKAGES).find(
      (name) => one.from === name || one.from.startsWith(`${name}/`),
    );
    const isNode = one.from.startsWith('node:') && !['cli', 'vision'].includes(one.room);
    return !isNode && (packageName === undefined || (PACKAGES[packageName] ?? []).includes(one.room));
  }
  if (target === one.room || allowed.includes(target)) return true;
  return one.isTypesOnly && allowed.includes(`${target} (types)`);
}

const sources = filesIn('src', /\.(ts|tsx)$/).filter((file) => file.split('/').length > 2);
const imports = sources.flatMap(importsOf);

it('knows every room of src', () => {
  const rooms = new Set(sources.map((file) => file.split('/')[1]));
  expect([...rooms].filter((room) => room && !(room in MAY_IMPORT))).toEqual([]);
});

it('sees imports of every kind', () => {
  const seen = (from: string) => imports.some((one) => one.from === from);
  expect(
    ['../image/raster', './analysisWorker.ts', 'node:fs/promises', 'sharp'].filter((from) => !seen(from)),
  ).toEqual([]);
});

it('imports only what the table of rooms and packages allows', () => {
  const broken = imports.filter((one) => !isAllowed(one));
  expect(broken.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
});

it('keeps files short', () => {
  const files = [...filesIn('src', /\.(ts|tsx|css)$/), ...filesIn('tests', /\.(ts|tsx|py)$/)];
  const lineCount = (file: string) => readFileSync(join(repository, file), 'utf8').split('\n').length - 1;
  const long = files
    .map((file) => ({ file, lines: lineCount(file) }))
    .filter(({ lines }) => lines > MOST_LINES);
  expect(long).toEqual([]);
});

it('has no file whose name says nothing', () => {
  const vague = /(^|\/)(utils?|helpers?|types|common|misc)\.tsx?$/;
  expect(filesIn('src', vague).map((file) => relative('src', file))).toEqual([]);
});
