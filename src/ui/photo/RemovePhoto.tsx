import type { TrayPhoto } from '../../state/trayPhoto';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { useStoreActions, useUndo } from '../stores';
import { photoName } from './photoName';

/** Takes a photo off the page; what the journal keeps of it stays. */
export function RemovePhoto({ photo }: { photo: TrayPhoto }) {
  const { remove, restore } = useStoreActions();
  const { done } = useUndo();
  const take = () => {
    remove(photo.id);
    done({ said: () => texts().page.photoRemoved(ownWords(photoName(photo))), undo: () => restore([photo]) });
  };
  return (
    <button type="button" className="button button-quiet" onClick={take}>
      {texts().page.removePhoto}
    </button>
  );
}
