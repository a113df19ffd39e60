import { MATERIAL_NAMES } from '../grading/materials';
import { STEPS } from '../grading/steps';

/** What `--help` prints. */
export const USAGE = `Grades tumbled stones in photos: measures each stone's shine and flaws and says what to do with it.

npm run grade -- PHOTO|FOLDER... [options]

  --exposures           all photos named are shots of one scene, taken from one place, that differ in exposure only:
                        merge them into one; places and picture are the first one's
  --lamp-moved PHOTO    a second photo of the same tray, ball and all, with the lamp carried elsewhere or the tray
                        turned: what its light shades is relief, what stays the same is pattern
  --ball-mm N           diameter of the reference ball in the tray, mm (16 when left out)
  --no-ball             no ball in the tray; needs --rig
  --ball-at ROW,COLUMN  a point on the ball, in pixels of the upright photo, when it is not found by itself
  --rig FILE            lamp and camera saved before: each photo is compared with them, and measured by them when
                        it shows no ball
  --save-rig FILE       save lamp and camera of the first photo with a ball, and say what to better about them
  --step NAME           step the stones come from: ${STEPS.join(', ')} (coarse when left out)
  --material NAME       material of the stones (unknown when left out)
  --json FILE           write all measurements and verdicts as JSON; - writes them to the standard output,
                        which then holds nothing else (with npm run --silent grade)
  --picture DIR         write the sorting picture of each photo there, as PNG
  --bundle FILE         write a bundle that the page's journal takes in: one batch, one check for each photo, with the
                        day that the photo was taken. Stones are known again where that is sure, and left unnamed
                        otherwise
  --batch-name NAME     name of the batch in the bundle
  --jobs N              grade N photos at a time, each in a process of its own: for folders of a year's photos. With
                        --json, each is noted at once beside that file, and the same command goes on where it stopped
  --help                print this

A folder stands for all photos in it. Ends with 0 when every photo was graded, 3 when any was refused, 2 when this
command was misused, 1 when a photo could not be graded for another reason.
Materials: ${MATERIAL_NAMES.join(', ')}.`;
