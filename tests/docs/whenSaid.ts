import {
  CLIPPED_PICTURE,
  FEWEST_PX_PER_MM,
  LEAST_JPEG_QUALITY,
  WARNED_BLUR_MM,
  WIDEST_LAMP_DEG,
} from '../../src/analysis/photoChecks';
import { BUNDLE_LIMITS } from '../../src/bundle/bundleFormat';
import { RECORDS_VERSION } from '../../src/journal/upgradeRecords';
import type { ByCode } from './noticeCodes';

const mib = (bytes: number) => `${Math.round(bytes / 2 ** 20)} MiB`;
const { journalBytes, pictureBytes, entries, pixels, jsonDepth } = BUNDLE_LIMITS;
const megapixels = (count: number) => `${count / 1e6} megapixels`;

/** When each code is said; a code without a line here does not compile. */
export const WHEN_SAID: ByCode<string> = {
  refusals: {
    'empty-file': 'The file has no bytes.',
    'not-an-image': 'The first bytes are of no format that is read, or the file cannot be decoded.',
    truncated: 'The format’s end is missing, or the decoder runs out of data.',
    'too-small': 'The shorter side has too few pixels (`image/checkSize.ts`).',
    'too-large': 'The header says more pixels than can be held (`image/checkSize.ts`); nothing is decoded.',
    'no-stone':
      'Nothing on the tray is large enough to be a stone, or all that is there is longer than 150 mm.',
    'no-ball': 'No ball was found or pointed at, and no rig is remembered.',
    'out-of-focus':
      'The sharpest edge of the picture is blurred too much; where no ball is found less is enough (`analysis/refuseBlindPhoto.ts`).',
    'too-dark':
      'No ball is found, and the bright parts of the picture are in the darkest steps of its 8 bits.',
    'low-resolution':
      'No ball is found, and the shorter side has fewer pixels than a hand’s breadth of tray needs.',
    'exposures-differ-in-size': 'Shots that are to be merged differ in width or height.',
    'exposures-differ-in-scene':
      'Shots that are to be merged cannot be laid on each other, or no exposure and tone curve explain them.',
  },
  warnings: {
    'ball-clipped': 'A good part of the lamp’s image on the ball is at the camera’s limit.',
    'low-resolution': `A millimeter has fewer than ${FEWEST_PX_PER_MM} pixels.`,
    'stone-cut-off': 'A stone’s outline touches the edge of the photo.',
    'lamp-too-large': `The lamp looks wider than ${WIDEST_LAMP_DEG}°.`,
    blurred: `The photo is blurred by more than ${WARNED_BLUR_MM} mm on the tray.`,
    compressed: `The file is a JPEG of a quality under ${LEAST_JPEG_QUALITY}.`,
    'too-dark': 'Neither the bright parts of the picture nor the ball’s highlight reach far enough.',
    clipped: `More than ${100 * CLIPPED_PICTURE} % of the picture is at the camera’s limit.`,
    'second-light': 'The ball mirrors a source of light beside the lamp.',
    'lamp-partly': 'The lamp’s image on the ball is uneven or askew, as of a lamp that is partly hidden.',
    'wet-stones': 'Glints of water are found on stones, or drops on the tray.',
    'ball-unlit':
      'The tray is more than 1.6 times as bright as a white one under the lamp that the ball mirrors; nothing on the photo may go on.',
    'unlike-stones':
      'Two fifths and more of what lies there throws another shadow than a stone, or is as round or as ragged as none (`analysis/unlikeStones.ts`).',
    'lamp-moved':
      'A rig is remembered, and the lamp’s direction, size or light, or the shadows, are not as they were; gloss is withheld.',
    'camera-moved':
      'A rig is remembered, and scale, focal length or size of the photo are not as they were; gloss is withheld.',
    'focus-lost': 'A rig is remembered, and the photo is blurred more than its was.',
    'exposure-changed':
      'A rig is remembered, and the light on the tray is another by one factor, without a moved lamp.',
    'tray-changed':
      'A rig is remembered, and the tray’s color, or its light where the file states the exposure, is another.',
    'moved-other-tray': 'The stones of the second photo cannot be laid on those of the first.',
    'moved-same-lamp': 'The lamp of the second photo is too near to the first’s.',
    'moved-no-ball': 'The second photo is refused, mostly because no ball is found in it.',
    'rig-unchecked': 'No ball is found, and the remembered rig is of a version that kept no scene.',
  },
  bundle: {
    unreadable: 'The browser no longer hands the file’s bytes over.',
    'not-a-zip': 'No end of a zip is found.',
    damaged:
      'List, places, sizes, names or checksums contradict each other, files lie in each other, or data end early.',
    locked: 'A file has the flag of a password, or is packed in another way than deflate.',
    'too-large': `The file, or what it says it unpacks to, is beyond what is held: ${mib(journalBytes)} of journal, ${mib(pictureBytes)} and ${megapixels(pixels.photo)} a photo, ${megapixels(pixels.thumbnail)} a thumbnail, ${entries} files, pictures that unpack to far more than the file has.`,
    'bad-name': 'A name leads out of the folder, holds control characters, is empty, or is there twice.',
    'no-journal': 'There is no `journal.json` at the top of the zip.',
    'broken-json': `\`journal.json\` is not JSON in UTF-8, or is nested more than ${jsonDepth} deep.`,
    'other-format': '`journal.json` does not name the format, a version from 1 on and a list of records.',
    newer: `Its version is above ${RECORDS_VERSION}, the newest this program knows.`,
    'bad-record':
      'A record does not fit the schema, or an earlier version’s lacks what that version held; the field is named.',
    'differing-records': 'Two records of the bundle have one id and differ.',
    'differing-from-kept': 'A record differs from the one that the journal keeps under its id.',
    'bad-photo': 'A picture is no JPEG, or lacks its photo or thumbnail.',
    unwritable: 'A journal is to be saved that could not be read again.',
  },
  journal: {
    refused: 'The browser does not open the database.',
    unreadable: 'Reading the database fails while stones are looked up or verdicts are said anew.',
    outdated:
      'Another page or edition has brought the database up to a newer version, before or while this one uses it.',
    full: 'Adding to the database fails in any other way, mostly for want of room; nothing is added then.',
  },
  camera: {
    denied: '`getUserMedia` answers NotAllowedError or SecurityError.',
    'no-camera': 'It answers NotFoundError or OverconstrainedError, or its stream has no picture.',
    'in-use': 'It answers NotReadableError or AbortError.',
    'not-offered': 'There is no `getUserMedia`, or it answers NotSupportedError.',
    lost: 'The camera’s track ends while its picture is shown.',
    broken: 'Opening it fails in any other way.',
  },
};
