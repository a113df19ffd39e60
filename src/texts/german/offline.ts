import type { Texts } from '../texts';

export const offline: Texts['offline'] = {
  newVersion: 'Es gibt eine neue Version.',
  waits: 'Sie lässt sich öffnen, sobald die Fotos gemessen sind.',
  closes: 'Fotos, die nicht im Journal stehen, gehen dabei zu.',
  open: 'Öffnen',
  later: 'Später',
};
