import { chmod } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { findChromium, findOrInstallChromium } from '../../.config/chromium.mjs';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();
const nowhere = join(folder.path, 'nowhere');

afterEach(() => vi.unstubAllEnvs());

/** A machine on which programs lie only in one folder, and Playwright keeps its own browsers nowhere. */
function machineWith(path: string): void {
  vi.stubEnv('CHROMIUM', '');
  vi.stubEnv('PATH', path);
  vi.stubEnv('PLAYWRIGHT_BROWSERS_PATH', nowhere);
}

async function program(name: string, script: string): Promise<string> {
  const path = await folder.save(name, `#!/bin/sh\n${script}\n`);
  await chmod(path, 0o755);
  return path;
}

it('takes the browser it is told to take', () => {
  machineWith(folder.path);
  vi.stubEnv('CHROMIUM', '/opt/own/browser');
  expect(findChromium()).toBe('/opt/own/browser');
});

it('finds none on an empty machine, and says what to do when none can be installed', () => {
  machineWith(nowhere);
  expect(findChromium()).toBeUndefined();
  expect(() => findOrInstallChromium()).toThrow('install Chromium or Chrome, or set CHROMIUM to its path.');
});

it("installs Debian's package when there is none, and finds it", async () => {
  const chromium = join(folder.path, 'chromium');
  const install = `case "$*" in *install*chromium*) printf '#!/bin/sh' > ${chromium}; /bin/chmod 755 ${chromium};; esac`;
  await program('apt-get', install);
  await program('sudo', '[ "$1" = -n ] && shift; exec "$@"');
  machineWith(folder.path);
  expect(findOrInstallChromium()).toBe(chromium);
  expect(findChromium()).toBe(chromium);
});
