/**
 * Runs one TypeScript file of this repository in Node, through Vite, so that it is the same code as in the page:
 * `node .config/run.mjs src/cli/grade.ts ARGUMENTS…`
 */

import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const repository = fileURLToPath(new URL('..', import.meta.url));
const [node, , file, ...rest] = process.argv;
if (!file) {
  console.error('Name the file to run, for example: node .config/run.mjs src/cli/grade.ts --help');
  process.exit(2);
}
const quiet = { root: repository, logLevel: 'error' };
const { module: plugins } = await runnerImport(
  resolve(repository, '.config/plugins/enginePlugins.ts'),
  quiet,
);
const target = resolve(repository, file);
process.argv = [node, target, ...rest];
// For what is run to start other files the same way.
process.env.GLINTGRADE_RUN = fileURLToPath(import.meta.url);
// npm starts scripts at the top of the repository; paths on the command line are meant from where npm was called.
const { INIT_CWD: calledFrom, npm_lifecycle_script: script } = process.env;
if (calledFrom && script?.includes('run.mjs')) process.chdir(calledFrom);
await runnerImport(target, { ...quiet, plugins: plugins.enginePlugins() });
