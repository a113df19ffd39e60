import { memo } from 'react';
import type { Framing } from '../../camera/framing';
import type { FramedStone, Preview } from '../../camera/preview';
import { useSpeech } from '../useSpeech';

const pathOf = (outline: readonly (readonly [number, number])[]) =>
  `M${outline.map(([row, column]) => `${(column + 0.5).toFixed(1)} ${(row + 0.5).toFixed(1)}`).join('L')}Z`;

/** Over the live picture: outlines of ball and stones, and how many stones there are. */
export const CameraOverlay = memo(function CameraOverlay({
  framing: { preview, stones, shown },
}: {
  framing: Framing;
}) {
  const { camera } = useSpeech().texts;
  if (preview === null) return null;
  return (
    <>
      <Outlines preview={preview} stones={shown ?? []} />
      {stones !== null && <p className="camera-count">{camera.stones(stones.length)}</p>}
    </>
  );
});

/** Light on dark, so that they stand out of any tray. */
function Outlines({ preview, stones }: { preview: Preview; stones: readonly FramedStone[] }) {
  const { widthPx, heightPx, ball } = preview;
  return (
    <svg
      className="camera-overlay"
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
      focusable="false"
    >
      {stones.map(({ outline, cutOff }) => {
        const path = pathOf(outline);
        return (
          <g key={path} className="camera-stone" data-cut-off={cutOff}>
            <path className="camera-casing" d={path} />
            <path className="camera-line" d={path} />
          </g>
        );
      })}
      {ball !== null && (
        <g className="camera-ball">
          <circle className="camera-casing" cx={ball.column + 0.5} cy={ball.row + 0.5} r={ball.radiusPx} />
          <circle className="camera-line" cx={ball.column + 0.5} cy={ball.row + 0.5} r={ball.radiusPx} />
        </g>
      )}
    </svg>
  );
}
