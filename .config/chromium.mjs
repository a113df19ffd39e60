/** Finds a Chromium for the browser tests and, when asked, installs one. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** Switches for a test browser: no window, no sandbox (containers), and no calls of its own to the network. */
export const CHROMIUM_SWITCHES = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** @returns {string | undefined} Path of a Chromium: that of CHROMIUM, the first on PATH, or Playwright's own. */
export function findChromium() {
  const named = process.env.CHROMIUM;
  if (named) return named;
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of NAMES) if (isProgram(join(folder, name))) return join(folder, name);
  }
  return playwrightsOwn();
}

/** Like findChromium, but installs one when none is found: from Debian's packages, else Playwright's. */
export function findOrInstallChromium() {
  const found = findChromium();
  if (found) return found;
  console.log('No Chromium found: installing one.');
  for (const [command, ...words] of installers()) {
    spawnSync(command, words, { stdio: 'inherit' });
    const installed = findChromium();
    if (installed) return installed;
  }
  throw new Error(
    'No Chromium was found and none could be installed: install Chromium or Chrome, or set CHROMIUM to its path.',
  );
}

function installers() {
  const apt = ['apt-get', 'install', '-y', '--no-install-recommends', 'chromium'];
  const update = ['apt-get', 'update'];
  const sudo = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  const debian = [
    [...sudo, ...update],
    [...sudo, ...apt],
  ];
  return [
    ...(isOnPath('apt-get') && (!sudo.length || isOnPath('sudo')) ? debian : []),
    ['npx', 'playwright', 'install', 'chromium'],
  ];
}

function playwrightsOwn() {
  const asked = spawnSync(
    process.execPath,
    ['-e', "import('playwright').then((p) => console.log(p.chromium.executablePath()))"],
    { encoding: 'utf8' },
  );
  const path = asked.stdout?.trim();
  return path && existsSync(path) ? path : undefined;
}

function isOnPath(name) {
  return (process.env.PATH ?? '').split(delimiter).some((folder) => isProgram(join(folder, name)));
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
