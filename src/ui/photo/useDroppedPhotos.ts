import { useEffect, useState } from 'react';
import type { NewPhoto } from '../../state/photoStore';
import { texts } from '../../texts/speech';

/** Names a file for the strip; a pasted picture often has no name of its own. */
export function asNewPhoto(file: File): NewPhoto {
  return { name: file.name || texts().tray.pastedPhoto, file };
}

/**
 * Takes photos dropped anywhere on the page or pasted into it.
 *
 * @param onPhotos - Called with at least one file, of whatever type: the analysis says what it cannot read.
 * @returns True while files are held over the page.
 */
export function useDroppedPhotos(onPhotos: (photos: NewPhoto[]) => void): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const take = (event: Event, files: FileList | null | undefined) => {
      if (!files?.length) return;
      event.preventDefault();
      onPhotos([...files].map(asNewPhoto));
    };
    const hold = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      setOver(false);
      take(event, event.dataTransfer?.files);
    };
    const paste = (event: ClipboardEvent) => take(event, event.clipboardData?.files);
    window.addEventListener('dragover', hold);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragover', hold);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
      window.removeEventListener('paste', paste);
    };
  }, [onPhotos]);
  return over;
}
