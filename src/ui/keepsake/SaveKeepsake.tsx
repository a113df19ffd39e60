import { useState } from 'react';
import type { Face } from '../../history/batchHistory';
import type { Keepsake } from '../../picture/placedStone';
import { texts } from '../../texts/speech';
import { saveFile } from '../parts/saveFile';
import { useKeptBitmaps, useRun } from '../stores';
import { useSpeech } from '../useSpeech';
import { drawKeepsake } from './drawKeepsake';

interface Props {
  /** Written on the button. */
  readonly word: string;
  /** Name of the file, without its ending; in English whatever is spoken. */
  readonly name: string;
  /** Draws the picture when it is asked for. */
  readonly picture: () => { readonly keepsake: Keepsake; readonly faces: readonly Face[] };
}

/** A button that saves a picture to keep as a PNG file. */
export function SaveKeepsake({ word, name, picture }: Props) {
  const words = useSpeech().texts.keepsake;
  const bitmapOf = useKeptBitmaps();
  const run = useRun();
  const [state, setState] = useState<'idle' | 'drawing' | 'saved' | 'failed'>('idle');
  const save = async () => {
    setState('drawing');
    try {
      const file = await run(
        () => texts().keepsake.drawing,
        async (watch) => {
          const { keepsake, faces } = picture();
          return drawKeepsake(keepsake, faces, bitmapOf, watch);
        },
      );
      if (file) saveFile(file, `${fileName(name)}.png`);
      setState(file ? 'saved' : 'idle');
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
        {state === 'saved' ? words.saved : ''}
      </p>
      {state === 'failed' && <p role="alert">{words.failed}</p>}
    </div>
  );
}

/** Letters and digits of any script, joined by hyphens; no longer than file systems bear. */
function fileName(name: string): string {
  const words = name.normalize('NFC').match(/[\p{L}\p{N}\p{M}]+/gu) ?? [];
  return [...words.join('-')].slice(0, 60).join('') || 'stone';
}
