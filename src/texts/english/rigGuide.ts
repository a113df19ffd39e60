/** Setting lamp and camera up, step by step. */
export const rigGuide = {
  title: 'Set up lamp and camera',
  lead: 'Once, in five minutes. After that every check is comparable with the last.',
  setupLink: 'Set up step by step',
  steps: {
    place: 'Put lamp, camera and tray in place',
    ball: 'Lay the ball among a few dry stones',
    look: 'Look through the camera',
    remember: 'Remember it',
  },
  placeHow:
    'One small, bright lamp, 25 to 45° to the side. The camera straight above, on a stand or a stack of books. A plain, matte tray. Every other light off.',
  placeMore: 'More about lamp, tray and ball',
  lookHow: 'Move lamp and camera until every line below the live picture is ticked. Then take the photo.',
  lookFile: 'Without a camera here, choose a photo taken with the rig as it stands.',
  done: 'done',
  looking: 'Take or choose a photo first; it is measured here.',
  mark: 'Now mark where lamp, camera and tray stand: tape on the bench is enough. You are told when something moved.',
  nextBatch: 'Start a batch',
  nextTray: 'Check a tray',
  facts: 'What the camera sees of the rig',
  ballFound: (ball: string, pixels: string) => `Ball found: ${ball} are ${pixels} pixels.`,
  ballMissing: 'No ball is seen yet: lay it among the stones, whole in the picture.',
  focusGood: 'Sharp, as far as the live picture tells.',
  focusBad: 'Blurred: hold still, and focus on the stones.',
  notYet: 'Not known before the ball is seen.',
} as const;
