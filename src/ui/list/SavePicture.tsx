import { useState } from 'react';
import { sortingPicture } from '../../picture/sortingPicture';
import type { GradedPhoto } from '../../state/gradePhoto';
import { texts } from '../../texts/speech';
import { saveFile } from '../parts/saveFile';
import { useRun } from '../stores';
import { drawSortingPicture } from './drawSortingPicture';

interface Props {
  readonly graded: GradedPhoto;
  readonly bitmap: ImageBitmap;
  /** Name of the photo's file. */
  readonly name: string;
}

/** Saves the sorting picture with its legend, the same that the command writes. */
export function SavePicture({ graded, bitmap, name }: Props) {
  const [trouble, setTrouble] = useState(false);
  const [busy, setBusy] = useState(false);
  const run = useRun();
  const save = async () => {
    setBusy(true);
    try {
      const file = await run(
        () => texts().keepsake.drawing,
        async (watch) => {
          const svg = sortingPicture(graded.report, graded.grades, { legend: true });
          return drawSortingPicture(bitmap, svg, watch);
        },
      );
      if (file) saveFile(file, `${name.replace(/\.[a-z]+$/i, '')}-sorted.png`);
      setTrouble(false);
    } catch {
      setTrouble(true);
    }
    setBusy(false);
  };
  return (
    <div>
      <button type="button" className="button" disabled={busy} onClick={save}>
        {texts().tray.savePicture}
      </button>
      {trouble && <p role="alert">{texts().tray.saveTrouble}</p>}
    </div>
  );
}
