/**
 * Scores the gloss of stones of known roughness: `npm run bench:gloss -- FOLDER [--part NAME] …`, see `USAGE` in
 * glossArguments.ts. The exit status says whether every target is met.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { type GlossArguments, glossArguments, USAGE } from './glossArguments';
import { glossBreakdown, variantLines } from './glossBreakdown';
import { changeLines } from './glossCompare';
import { glossCrops } from './glossCrops';
import { faultVerdicts, misjudgedPhotos } from './glossFaults';
import { glossPool } from './glossPool';
import { repeatability, repeatVerdict } from './glossRepeat';
import type { GlossPhotoRow, GlossRow } from './glossRow';
import { badlyOffUnwarned, readable } from './glossScores';
import { sideBySide } from './glossSideBySide';
import { skinLines } from './glossSkin';
import { cleanVerdicts, perturbedVerdicts } from './glossTargets';
import { CLEAN, glossPhotosIn } from './glossTruth';
import { stoneText, unanswered, worstStones } from './glossWorst';
import type { Verdict } from './realVerdict';

/** What one run saves and another reads. */
interface GlossRun {
  readonly photos: readonly GlossPhotoRow[];
  readonly rows: readonly GlossRow[];
}

const WORST = 15;
/** Two exposures of one scene, each of them clipped or dark on purpose, and both merged: shown, but no perturbed copies. */
const PAIRED = /^pair/;

const wanted = wantedOrExit();
const run = wanted.saved === null ? await measured(wanted) : readRun(wanted.saved);
if (wanted.json) writeFileSync(wanted.json, JSON.stringify(run));
const unmet = report(run);
if (wanted.compare) print(changeLines(readRun(wanted.compare).rows, run.rows));
// Whoever improves the fit must not look at single stones of the test part; stones of spoiled photos tell nothing.
const isOpen = run.photos.every(({ part, faults }) => part !== 'test' && faults.length === 0);
if (isOpen) await showStones(run.rows);
process.exitCode = unmet > 0 ? 1 : 0;

function wantedOrExit(): GlossArguments {
  try {
    return glossArguments(process.argv.slice(2));
  } catch (error) {
    console.error(`${(error as Error).message}\n\n${USAGE}`);
    process.exit(2);
  }
}

async function measured({ folder, only, variants, processes }: GlossArguments): Promise<GlossRun> {
  const photos = glossPhotosIn(folder!).filter(
    ({ scene, variant }) => scene.includes(only ?? '') && (variants?.includes(variant) ?? true),
  );
  if (photos.length === 0) {
    console.error(`${folder} holds no such photos.`);
    process.exit(2);
  }
  const results = await glossPool(photos, processes, (done, { photo, rows }) => {
    const { scene, variant, refused, seconds } = photo;
    const numbers = rows.filter(({ reading }) => reading).length;
    const outcome = refused ? `refused: ${refused}` : `${numbers} of ${rows.length} stones with a number`;
    console.error(`${done} of ${photos.length}  ${scene} ${variant}  ${outcome}  ${seconds.toFixed(1)} s`);
  });
  return { photos: results.map(({ photo }) => photo), rows: results.flatMap(({ rows }) => rows) };
}

function readRun(path: string): GlossRun {
  return JSON.parse(readFileSync(path, 'utf8')) as GlossRun;
}

/** Prints every table that the photos call for; returns how many targets are not met. */
function report({ photos, rows }: GlossRun): number {
  const clean = rows.filter(({ variant }) => variant === CLEAN);
  const perturbed = rows.filter(({ variant }) => variant !== CLEAN && !PAIRED.test(variant));
  const verdicts: Verdict[] = [];
  const add = (title: string, some: readonly Verdict[]) => {
    show(title, some);
    verdicts.push(...some);
  };
  print(photoLines(photos, rows));
  if (photos.some(({ faults }) => faults.length > 0)) {
    add('Photo checks', faultVerdicts(photos));
    print(['', 'Photos misjudged', ...misjudgedPhotos(photos)]);
  } else {
    if (clean.some(({ sameStone }) => sameStone !== null))
      add('Repeatability', [repeatVerdict(repeatability(clean))]);
    else if (clean.length > 0) add('Clean photos', cleanVerdicts(clean));
    if (perturbed.length > 0) add('Perturbed copies', perturbedVerdicts(perturbed));
    print(variantLines(rows));
    print(glossBreakdown(cleanOrAll(rows)));
    print(sideBySide(cleanOrAll(rows)));
    print(skinLines(cleanOrAll(rows)));
  }
  const failed = verdicts.filter(({ met }) => !met).length;
  console.log(`\n${verdicts.length - failed} of ${verdicts.length} targets met`);
  return verdicts.length === 0 ? 1 : failed;
}

function cleanOrAll(rows: readonly GlossRow[]): readonly GlossRow[] {
  const clean = rows.filter(({ variant }) => variant === CLEAN);
  return clean.length > 0 ? clean : rows;
}

/** Lists the stones that development should look at, and writes crops of those with a wrong number. */
async function showStones(rows: readonly GlossRow[]): Promise<void> {
  const clean = cleanOrAll(rows);
  const worst = worstStones(clean, WORST);
  const bad = badlyOffUnwarned(readable(rows));
  const list = (title: string, some: readonly GlossRow[]) => {
    if (some.length > 0) print(['', title, ...some.map(stoneText)]);
  };
  list(`The ${worst.length} worst`, worst);
  list('Off by more than a factor of 2 without a warning', bad);
  list('Glossiest without a number', unanswered(clean).slice(0, WORST));
  list(
    'Not found',
    clean.filter(({ isFound }) => !isFound),
  );
  const crops = [...worst, ...bad.filter((row) => !worst.includes(row))];
  if (wanted.crops) print((await glossCrops(crops, wanted.crops)).map((path) => `  ${path}`));
}

function photoLines(photos: readonly GlossPhotoRow[], rows: readonly GlossRow[]): string[] {
  const refused = photos.filter((photo) => photo.refused !== null);
  const found = rows.filter(({ isFound }) => isFound).length;
  const hidden = rows.filter(({ isFound, isHighlightSeen }) => isFound && !isHighlightSeen).length;
  return [
    `${photos.length} photos, ${refused.length} refused; ${found} of ${rows.length} stones found, ${hidden} of them with a hidden highlight and left out`,
    ...refused.map(({ scene, variant, refused: code }) => `  ${scene} ${variant} refused: ${code}`),
  ];
}

function show(title: string, verdicts: readonly Verdict[]): void {
  print(['', title]);
  for (const { what, measured, target, met } of verdicts) {
    console.log(`  ${met ? 'met    ' : 'NOT MET'} ${what}: ${measured} (target ${target})`);
  }
}

function print(lines: readonly string[]): void {
  for (const line of lines) console.log(line);
}
