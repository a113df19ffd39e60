/** Why a photo is refused, what to know before trusting it, and what went wrong. */
export const notices = {
  /** Why a photo cannot be graded, and what to do. */
  refusals: {
    'empty-file': 'The file is empty: take the photo again or choose another file.',
    'not-an-image': 'This is not a photo this program can read: choose a JPEG, PNG, WebP, AVIF or HEIC file.',
    truncated: 'The photo is cut short: copy it again from the camera, or take it again.',
    'too-small': 'The photo is too small to measure: use one at least 200 pixels on its shorter side.',
    'too-large': 'The photo is larger than this program can hold: save it at 50 megapixels or fewer.',
    'no-stone':
      'No stone was found: lay the stones apart on a plain tray and fill the picture with the tray.',
    'no-ball':
      'No reference ball was found: lay the dark glass ball in the tray, or point at it, or use a saved rig.',
    'out-of-focus':
      'The photo is out of focus: hold the camera steady, focus on the stones and take it again.',
    'too-dark':
      'The photo is too dark to measure: give it more exposure, or bring the lamp nearer, and take it again.',
    'low-resolution':
      'The photo has too few pixels to find the ball: go closer, or save it larger: at least four pixels per millimeter.',
    'exposures-differ-in-size':
      'The shots are not of one size: take them with the same camera, held the same way, and do not crop them.',
    'exposures-differ-in-scene':
      'The shots do not show the same scene: leave camera, lamp and stones as they are, change the exposure by one to three stops, and nothing else.',
  },
  /** What to know of a photo that was graded all the same. */
  warnings: {
    'ball-clipped':
      'The highlight on the ball is clipped, so gloss is less certain: take the photo darker, or add a darker shot.',
    'low-resolution':
      'Few pixels per millimeter: small pits can be missed; go closer or photograph fewer stones.',
    'stone-cut-off':
      'A stone touches the edge of the photo and was only partly seen: move it in, or go farther away.',
    'lamp-too-large': 'The lamp looks too large to tell gloss from mirror: halve it or double its distance.',
    blurred:
      'The photo is slightly blurred, so near-mirror finishes are less certain: hold the camera steady and focus on the stones.',
    compressed:
      'The photo was saved with strong compression, which softens the edges of highlights, so near-mirror finishes are less certain: use the camera’s own file, not one sent by a messenger.',
    'too-dark': 'The photo is too dark for dull stones to show their shine: give it more exposure.',
    clipped:
      'Parts of the photo are at the camera’s limit, so gloss and flaws there are lost: take it darker.',
    'second-light':
      'The ball mirrors a second light, whose glints can be taken for the lamp’s: cover the window or switch that light off.',
    'lamp-partly':
      'The ball mirrors only part of the lamp, so every gloss is off: move what stands between them, or use a round or square lamp.',
    'wet-stones':
      'These stones look wet, and water fakes a polish: dry them and the tray, and take the photo again.',
    'ball-unlit':
      'The tray is brighter than the lamp in the ball can make it: the ball may be a picture of one, or another light is stronger. Lay the glass ball itself under the lamp, and take the photo again.',
    'unlike-stones':
      'Much on this tray does not look like stones in the lamp’s light: too flat, too round or too ragged, as coins, marbles or pictures are. Check what lies there, and that nothing takes the shadows away.',
    'lamp-moved':
      'The lamp is not where it was when lamp and camera were remembered: put it back, or lay the ball in the tray and remember them anew.',
    'camera-moved':
      'The camera or the size of its photos is not as remembered, so sizes are off without the ball: lay it in the tray and remember lamp and camera anew.',
    'focus-lost': 'The photo is blurrier than the remembered one: focus on the stones and take it again.',
    'exposure-changed':
      'The exposure is not the remembered one: gloss was corrected by the light on the tray, which holds for the same tray only; lock the exposure, or lay the ball in the tray.',
    'tray-changed':
      'The light on the bare tray is not as remembered, so gloss is less certain: put lamp and tray back as they were, or lay the ball in the tray.',
    'moved-other-tray':
      'The second photo does not show these stones lying the same way, so it was not used: move only the lamp, or turn the whole tray, and take it again.',
    'moved-same-lamp':
      'In the second photo the lamp shines from where it did before, so it was not used: carry the lamp about a third of the way around the tray, and take it again.',
    'moved-no-ball':
      'The second photo shows no reference ball to tell where its lamp is, so it was not used: leave the ball in the tray, and take it again.',
    'rig-unchecked':
      'The remembered lamp and camera are of an earlier kind that cannot be checked, so gloss is less certain: remember them anew from a photo with the ball.',
  },
  /** Refusals that speak of millimeters, for those who measure in inches. */
  refusalsInInches: {
    'low-resolution':
      'The photo has too few pixels to find the ball: go closer, or save it larger: at least a hundred pixels per inch.',
  },
  /** Warnings that speak of millimeters, for those who measure in inches. */
  warningsInInches: {
    'low-resolution': 'Few pixels per inch: small pits can be missed; go closer or photograph fewer stones.',
  },
  stopped: 'Stopped: this photo was not measured.',
  failed: (detail: string) => `Measuring this photo failed. Try it once more or take another. (${detail})`,
  /** Details of what failed; each names a cause in the engine's own words. */
  brokeOff: (cause: string) =>
    `The analysis broke off${cause === '' ? '' : ` (${cause})`}: try the photo again.`,
  answerUnread: 'an answer could not be read',
  analysisFailed: (cause: string) => `The analysis failed: ${cause}`,
} as const;
