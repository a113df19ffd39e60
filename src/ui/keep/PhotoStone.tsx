import { useEffect, useRef } from 'react';
import type { StoneReport } from '../../analysis/report';
import { drawCutOut } from '../list/drawCutOut';

/** A stone cut out of the photo on the screen; the text beside it says which. */
export function PhotoStone({ stone, bitmap }: { stone: StoneReport; bitmap: ImageBitmap | null }) {
  const ref = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (ref.current !== null && bitmap !== null) drawCutOut(ref.current, bitmap, stone, 2);
  }, [bitmap, stone]);
  return <canvas ref={ref} className="stone-picture" width={144} height={144} />;
}
