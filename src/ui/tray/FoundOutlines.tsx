import { memo } from 'react';
import type { FoundStones } from '../../analysis/options';
import { outlinePath } from '../../picture/outlinePath';

/** The stones as they were found, while they are measured: a plain line around each, which says nothing of it yet. */
export const FoundOutlines = memo(function FoundOutlines({ found }: { found: FoundStones }) {
  const { widthPx, heightPx, outlines } = found;
  const path = outlines.map((outline) => outlinePath(outline, 0.5)).join('');
  return (
    <svg
      className="found-outlines"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
      focusable="false"
    >
      <path className="found-casing" d={path} />
      <path d={path} />
    </svg>
  );
});
