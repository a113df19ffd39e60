import { gradePhotos } from './gradePhotos';

/** The command itself: `npm run grade -- PHOTO…`; see usage.ts. */
process.exitCode = await gradePhotos(process.argv.slice(2), {
  say: (text) => process.stdout.write(`${text}\n`),
  complain: (text) => process.stderr.write(`${text}\n`),
});
