import type { TrayPhoto } from '../../state/trayPhoto';
import { texts } from '../../texts/speech';

/** What a photo is called on the page: as its file, or as what it is when it is ours. */
export const photoName = ({ sample, name }: Pick<TrayPhoto, 'sample' | 'name'>): string =>
  sample ? texts().tray.sampleName : name;
