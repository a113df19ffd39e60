/** The copy of the app on the device. */
export const offline = {
  newVersion: 'A new version is here.',
  waits: 'It can be opened once the photos are measured.',
  closes: 'Photos not kept in the journal close.',
  open: 'Open it',
  later: 'Later',
} as const;
