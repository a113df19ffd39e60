const OPENING = '            function(cv) {';
const CLOSING = '        );\n    })();\n    if (typeof exports';
const DYNAMIC_CODE = /\bnew Function\b|\bnew_\(Function\b|\beval\s*\(/;

/** Pieces of the glue that look for a page, a worker or Node; without them it only uses what it is handed. */
const SURROUNDINGS = [
  'ENVIRONMENT_IS_WEB = typeof window === "object";',
  'ENVIRONMENT_IS_WORKER = typeof importScripts === "function";',
  'ENVIRONMENT_HAS_NODE = typeof process === "object" && typeof process.versions === "object" && typeof process.versions.node === "string";',
  'ENVIRONMENT_IS_NODE = ENVIRONMENT_HAS_NODE && !ENVIRONMENT_IS_WEB && !ENVIRONMENT_IS_WORKER;',
  'ENVIRONMENT_IS_SHELL = !ENVIRONMENT_IS_WEB && !ENVIRONMENT_IS_NODE && !ENVIRONMENT_IS_WORKER;',
];

/**
 * Turns the text of opencv-wasm's `opencv.js` into a module whose default export starts OpenCV.
 *
 * The module builds no code from text and reaches for no file, page or network: the WebAssembly is handed to it
 * through `instantiateWasm`.
 *
 * @param source - Text of the package's `opencv.js`.
 * @param glue - Text of openCvGlue.js, whose functions replace those of the same name.
 * @returns Text of an ES module.
 * @throws Error that names the piece not found exactly once, so that a changed package stops the build.
 */
export function patchOpenCv(source: string, glue: string): string {
  let code = takeFactory(source.replaceAll('\r\n', '\n'));
  for (const piece of SURROUNDINGS) code = replaceOnce(code, piece, '');
  code = replaceOnce(
    code,
    'var wasmBinaryFile = opencvWasmBinaryFile;',
    'var wasmBinaryFile = "opencv.wasm";',
  );
  code = code.replace(/require\("(fs|path|crypto)"\)/g, 'null');
  // A module with a `then` that hands itself on would make `await` wait for ever.
  code = replaceOnce(code, 'Module["then"] = function(func) {', 'var unusedThen = function(func) {');
  for (const [name, text] of topLevelFunctions(glue)) code = replaceFunction(code, name, text);
  const left = DYNAMIC_CODE.exec(code);
  if (left) throw new Error(`opencv-wasm has changed: "${left[0]}" is left in its glue.`);
  return code;
}

function takeFactory(source: string): string {
  const start = source.indexOf(OPENING);
  const end = source.indexOf(CLOSING);
  if (start < 0 || end < start) throw new Error('opencv-wasm has changed: its factory was not found.');
  return `export default${source.slice(start + OPENING.indexOf('function') - 1, end)}`;
}

function replaceOnce(code: string, piece: string, replacement: string): string {
  const parts = code.split(piece);
  if (parts.length !== 2) {
    throw new Error(`opencv-wasm has changed: "${piece}" was found ${parts.length - 1} times, not once.`);
  }
  return parts.join(replacement);
}

/** Replaces a function declaration, from its first line to the closing brace at the same indentation. */
function replaceFunction(code: string, name: string, replacement: string): string {
  const pattern = new RegExp(`^( *)function ${name}\\([\\s\\S]*?^\\1\\}$`, 'gm');
  const count = [...code.matchAll(pattern)].length;
  if (count !== 1)
    throw new Error(`opencv-wasm has changed: function ${name} was found ${count} times, not once.`);
  return code.replace(pattern, () => replacement);
}

function topLevelFunctions(glue: string): [name: string, text: string][] {
  return [...glue.matchAll(/^function (\w+)\([\s\S]*?^\}$/gm)].map((match) => [match[1] ?? '', match[0]]);
}
