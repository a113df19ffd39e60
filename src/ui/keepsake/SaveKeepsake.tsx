import { useState } from 'react';
import type { Face } from '../../history/batchHistory';
import type { Keepsake } from '../../picture/placedStone';
import { saveFile } from '../parts/saveFile';
import { useKeptBitmaps } from '../stores';
import { drawKeepsake } from './drawKeepsake';

interface Props {
  /** Written on the button. */
  readonly word: string;
  /** Name of the file, without its ending. */
  readonly name: string;
  /** Draws the picture when it is asked for. */
  readonly picture: () => { readonly keepsake: Keepsake; readonly faces: readonly Face[] };
}

/** A button that saves a picture to keep as a PNG file. */
export function SaveKeepsake({ word, name, picture }: Props) {
  const bitmapOf = useKeptBitmaps();
  const [state, setState] = useState<'idle' | 'drawing' | 'saved' | 'failed'>('idle');
  const save = async () => {
    setState('drawing');
    try {
      const { keepsake, faces } = picture();
      saveFile(await drawKeepsake(keepsake, faces, bitmapOf), `${fileName(name)}.png`);
      setState('saved');
    } catch {
      setState('failed');
    }
  };
  return (
    <div className="keepsake">
      <button type="button" className="button" disabled={state === 'drawing'} onClick={save}>
        {word}
      </button>
      <p role="status" className="fine">
        {state === 'drawing' ? 'Drawing the picture…' : state === 'saved' ? 'Saved.' : ''}
      </p>
      {state === 'failed' && (
        <p role="alert">The picture could not be saved on this device: take a screenshot instead.</p>
      )}
    </div>
  );
}

/** Letters and digits of any script, joined by hyphens; no longer than file systems bear. */
function fileName(name: string): string {
  const words = name.normalize('NFC').match(/[\p{L}\p{N}\p{M}]+/gu) ?? [];
  return [...words.join('-')].slice(0, 60).join('') || 'stone';
}
