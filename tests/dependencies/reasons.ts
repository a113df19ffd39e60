/** Where a package is at work: in the page that is published, in the command and the build, or only in checks. */
export type Place = 'page' | 'command and build' | 'checks';

/** Why each package is there; one that leaves package.json leaves here too. */
export const REASONS: Readonly<Record<string, readonly [place: Place, reason: string]>> = {
  dexie: ['page', 'transactions and versions of IndexedDB without its traps'],
  exifr: ['page', 'focal length, exposure and moment out of EXIF'],
  fflate: ['page', 'deflate, for bundles'],
  'libheif-js': [
    'page',
    'HEIC, which most browsers cannot show; the library is an unchanged WebAssembly file of its own',
  ],
  munkres: ['page', 'stones matched one to one'],
  'onnxruntime-web': ['page', 'runs the flaw network'],
  'opencv-wasm': ['page', 'image operations in WebAssembly, the same in page and command'],
  react: ['page', 'components'],
  'react-dom': ['page', 'components on the page'],
  ulid: ['page', 'ids that are unique and sort by time'],
  wouter: ['page', 'addresses and the back button in 2 kB'],
  zod: ['page', 'checks records that come in; makes the published schema'],
  zustand: ['page', 'state without React in it'],
  sharp: [
    'command and build',
    'decodes and writes pictures in Node; its libvips is a library of its own, loaded when it runs',
  ],
  vite: ['command and build', 'builds the page; runs TypeScript in Node for the command'],
  assemblyscript: [
    'checks',
    'compiles the kernels, which are kept compiled; 100 MB with its Binaryen, none of it shipped',
  ],
  '@axe-core/playwright': ['checks', 'accessibility rules on the served page'],
  '@biomejs/biome': ['checks', 'lint and format in one tool'],
  '@cfworker/json-schema': ['checks', 'a second reader of the published schema'],
  '@types/node': ['checks', 'types of Node 20'],
  '@types/react': ['checks', 'types of React'],
  '@types/react-dom': ['checks', 'types of React'],
  '@vitejs/plugin-react': ['command and build', 'JSX in the build'],
  '@vitest/browser-playwright': ['checks', 'tests inside Chromium'],
  'fast-check': ['checks', 'laws over made-up records'],
  'ical.js': ['checks', 'a second reader of the calendar'],
  lighthouse: ['checks', 'audits the built page'],
  playwright: ['checks', 'drives Chromium'],
  typescript: ['checks', 'types'],
  vitest: ['checks', 'runs the tests; 5 needs Node 22'],
};
