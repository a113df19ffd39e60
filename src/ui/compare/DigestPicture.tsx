import type { StoneDigest } from '../../history/batchDigest';
import { StonePicture } from '../journal/StonePicture';
import { useHistory } from '../journal/useHistory';

/** A stone as its last check shows it. */
export function DigestPicture({ stone }: { stone: StoneDigest }) {
  const history = useHistory(stone.batch);
  const own = history?.stones.find(({ stone: { id } }) => id === stone.stone);
  const face = own?.checks.at(-1)?.faces[0];
  return face ? <StonePicture face={face} label="" sidePx={320} /> : null;
}
