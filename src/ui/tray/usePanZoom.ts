import { type RefObject, useState } from 'react';
import type { Gesture, Place } from './fingers';
import { clampView, panBy, photoPlace, type Size, type View, WHOLE_PHOTO, zoomAbout } from './panZoom';
import { useFingers } from './useFingers';
import { useStageSize } from './useStageSize';
import { useWheel } from './useWheel';

/**
 * Pan by dragging, zoom by pinching or by the wheel, tap.
 *
 * @param stageRef - The element that shows part of the photo.
 * @param photo - Size of the photo, photo pixels.
 * @param onTap - Called with photo row and column and with photo pixels in one CSS pixel.
 */
export function usePanZoom(
  stageRef: RefObject<HTMLElement | null>,
  photo: Size,
  onTap: (row: number, column: number, pxPerDot: number) => void,
) {
  const stage = useStageSize(stageRef);
  const [wished, setView] = useState<View>(WHOLE_PHOTO);
  const ready = stage.width > 0 && stage.height > 0;
  const view = ready ? clampView(wished, stage, photo) : WHOLE_PHOTO;
  const middle = { x: stage.width / 2, y: stage.height / 2 };

  const zoom = (factor: number, at: Place) =>
    setView((old) => (ready ? zoomAbout(clampView(old, stage, photo), factor, at, stage, photo) : old));
  const tap = ({ x, y }: Place) => {
    const { left, top, width } = photoPlace(view, stage, photo);
    const pxPerDot = photo.width / width;
    onTap((y - top) * pxPerDot, (x - left) * pxPerDot, pxPerDot);
  };
  const obey = (gesture: Gesture) => {
    if (gesture.kind === 'tap') tap(gesture.at);
    else if (gesture.kind === 'pinch') zoom(gesture.factor, gesture.at);
    else setView((old) => panBy(clampView(old, stage, photo), gesture.dx, gesture.dy, stage, photo));
  };
  useWheel(stageRef, zoom);

  return {
    view,
    place: ready ? photoPlace(view, stage, photo) : null,
    pointerHandlers: useFingers(obey),
    enlarge: (factor: number) => zoom(factor, middle),
    fit: () => setView(WHOLE_PHOTO),
    /** Brings a place of the photo into view, as when a stone is reached by keyboard. */
    reveal: (x: number, y: number) => {
      if (view.zoom > 1) setView(clampView({ zoom: view.zoom, x, y }, stage, photo));
    },
  };
}
