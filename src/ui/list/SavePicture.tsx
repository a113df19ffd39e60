import { useState } from 'react';
import { sortingPicture } from '../../picture/sortingPicture';
import type { GradedPhoto } from '../../state/gradePhoto';
import { saveFile } from '../parts/saveFile';
import { drawSortingPicture } from './drawSortingPicture';

interface Props {
  readonly graded: GradedPhoto;
  readonly bitmap: ImageBitmap;
  /** Name of the photo's file. */
  readonly name: string;
}

/** Saves the sorting picture with its legend, the same that the command writes. */
export function SavePicture({ graded, bitmap, name }: Props) {
  const [trouble, setTrouble] = useState<string | null>(null);
  const save = async () => {
    try {
      const svg = sortingPicture(graded.report, graded.grades, { legend: true });
      saveFile(await drawSortingPicture(bitmap, svg), `${name.replace(/\.[a-z]+$/i, '')}-sorted.png`);
      setTrouble(null);
    } catch {
      setTrouble('The sorting picture could not be saved on this device: take a screenshot instead.');
    }
  };
  return (
    <div>
      <button type="button" className="button" onClick={save}>
        Save the sorting picture
      </button>
      {trouble !== null && <p role="alert">{trouble}</p>}
    </div>
  );
}
