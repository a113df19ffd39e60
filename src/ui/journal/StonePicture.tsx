import { useEffect, useRef } from 'react';
import type { Face } from '../../history/batchHistory';
import { drawCutOut } from '../list/drawCutOut';
import { useKeptBitmaps } from '../stores';

interface Props {
  readonly face: Face;
  /** What it shows, for those who cannot see it; empty when the text beside it says so. */
  readonly label: string;
  /** Canvas pixels along one side; twice what is shown. */
  readonly sidePx?: number;
}

/** A stone cut out of a kept photo; empty where the photo was not kept. */
export function StonePicture({ face, label, sidePx = 144 }: Props) {
  const ref = useRef<HTMLCanvasElement>(null);
  const bitmapOf = useKeptBitmaps();
  const { photo, stone } = face;
  useEffect(() => {
    let isStale = false;
    const { longestPx } = photo;
    if (photo.photo === null || longestPx === null) return;
    bitmapOf(photo.photo).then((bitmap) => {
      if (isStale || ref.current === null || bitmap === null) return;
      const scale = Math.max(bitmap.width, bitmap.height) / longestPx;
      const outline = stone.outline.map(([row, column]) => [row * scale, column * scale] as const);
      drawCutOut(ref.current, bitmap, { outline }, 2);
    });
    return () => {
      isStale = true;
    };
  }, [bitmapOf, photo, stone]);
  return (
    <canvas
      ref={ref}
      className="stone-picture"
      width={sidePx}
      height={sidePx}
      {...(label === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
    />
  );
}
