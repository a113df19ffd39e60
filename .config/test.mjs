/**
 * `npm test`: lint, types, unit tests in Node and tests in a real Chromium, then one line of totals.
 * Lint and types count as one check each. Chromium is found or installed first.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findOrInstallChromium } from './chromium.mjs';

const totals = { passed: 0, failed: 0 };

function npmRun(script, ...words) {
  console.log(`\n— ${script}`);
  const more = words.length > 0 ? ['--', ...words] : [];
  return spawnSync('npm', ['run', '--silent', script, ...more], { stdio: 'inherit' }).status === 0;
}

function check(script) {
  totals[npmRun(script) ? 'passed' : 'failed']++;
}

/** Runs a Vitest script and adds its figures; a file that could not even start counts as one failure. */
function countTests(script) {
  const folder = mkdtempSync(join(tmpdir(), 'glintgrade-test-'));
  const file = join(folder, 'results.json');
  const isGood = npmRun(script, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`);
  const { passed, failed } = figuresIn(file);
  totals.passed += passed;
  totals.failed += isGood ? failed : Math.max(1, failed);
  rmSync(folder, { recursive: true });
}

function figuresIn(file) {
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
    const unstarted = testResults.filter(
      (suite) => suite.status === 'failed' && suite.assertionResults.length === 0,
    );
    return { passed: numPassedTests, failed: numFailedTests + unstarted.length };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

check('lint');
check('typecheck');
countTests('test:unit');
try {
  process.env.CHROMIUM = findOrInstallChromium();
  countTests('test:browser');
} catch (error) {
  console.error(error.message);
  totals.failed++;
}
console.log(`\n${totals.passed} passed, ${totals.failed} failed`);
process.exitCode = totals.failed === 0 && totals.passed > 0 ? 0 : 1;
