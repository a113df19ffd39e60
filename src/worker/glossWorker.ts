import { stoneGloss } from '../analysis/stoneGloss';
import type { GlossAnswer, GlossOrder } from './messages';

/** The module worker behind `openGlossPool`: reads the gloss of one stone after the other. */

addEventListener('message', ({ data }: MessageEvent<GlossOrder>) => {
  const { id, light } = data;
  const { corner, ...crop } = data.crop;
  const toPhoto = (row: number, column: number) =>
    [corner[0] + row * crop.factor, corner[1] + column * crop.factor] as const;
  const answer: GlossAnswer = { id, gloss: glossOrNull(() => stoneGloss({ ...crop, toPhoto }, light)) };
  self.postMessage(answer);
});

function glossOrNull(read: () => GlossAnswer['gloss']): GlossAnswer['gloss'] {
  try {
    return read();
  } catch {
    return null;
  }
}
