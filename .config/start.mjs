/**
 * `npm start`: grades the sample photos with the command, writes their sorting pictures, then builds the app,
 * serves it and opens it where there is a screen.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const PICTURES = 'graded';
const REFUSED = 3;
const repository = fileURLToPath(new URL('..', import.meta.url));
process.chdir(repository);

/** The step a sample's stones come from, as the file about its truth says. */
function stepOf(photo) {
  const truth = join('sample-images', photo.replace(/\.jpg$/, '.json'));
  return existsSync(truth) ? JSON.parse(readFileSync(truth, 'utf8')).step : undefined;
}

function gradeSamples() {
  for (const photo of readdirSync('sample-images').filter((name) => name.endsWith('.jpg'))) {
    const step = stepOf(photo);
    const words = [join('sample-images', photo), '--picture', PICTURES, ...(step ? ['--step', step] : [])];
    const { status } = spawnSync(process.execPath, ['.config/run.mjs', 'src/cli/grade.ts', ...words], {
      stdio: 'inherit',
    });
    if (status !== 0 && status !== REFUSED) process.exit(status ?? 1);
  }
  console.log(`\nTheir sorting pictures are in ${join(repository, PICTURES)}.`);
}

/** Opens an address in the person's own browser; nothing happens where there is no screen. */
function openBrowser(url) {
  const hasScreen = process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (!hasScreen || process.env.CI) return;
  const [command, ...words] = { darwin: ['open'], win32: ['cmd', '/c', 'start', '""'] }[process.platform] ?? [
    'xdg-open',
  ];
  spawn(command, [...words, url], { stdio: 'ignore', detached: true })
    .on('error', () => {})
    .unref();
}

console.log('Grading the sample photos …');
gradeSamples();
console.log('\nBuilding the app …');
const settings = { configFile: '.config/vite.config.ts', logLevel: 'warn' };
await build(settings);
const server = await preview(settings);
const url = server.resolvedUrls?.local[0];
console.log(`\nGlintgrade is at ${url} — stop it with Ctrl+C.`);
if (url) openBrowser(url);
