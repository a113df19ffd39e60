import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import { clampView, panBy, photoPlace, type Size, type View, WHOLE_PHOTO, zoomAbout } from './panZoom';

/** A finger that moved less than this many CSS pixels tapped; more, and it dragged. */
const TAP_SLACK = 9;

interface Point {
  readonly x: number;
  readonly y: number;
}

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
  const [stage, setStage] = useState<Size>({ width: 0, height: 0 });
  const [wished, setView] = useState<View>(WHOLE_PHOTO);
  const fingers = useRef(new Map<number, Point>());
  const moved = useRef(0);
  const ready = stage.width > 0 && stage.height > 0;
  const view = ready ? clampView(wished, stage, photo) : WHOLE_PHOTO;

  const locate = (event: { clientX: number; clientY: number }): Point => {
    const box = stageRef.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };

  useEffect(() => {
    const element = stageRef.current;
    if (element === null) return;
    const measure = () => setStage({ width: element.clientWidth, height: element.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [stageRef]);

  useEffect(() => {
    const element = stageRef.current;
    if (element === null) return;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      const at = { x: event.clientX - box.left, y: event.clientY - box.top };
      setView((old) => zoomAbout(clampView(old, stage, photo), Math.exp(-event.deltaY / 400), at, stage, photo));
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [stageRef, stage, photo]);

  const onPointerDown = (event: PointerEvent) => {
    if ((event.target as Element).closest('button') !== null) return;
    if (fingers.current.size === 0) moved.current = 0;
    fingers.current.set(event.pointerId, locate(event));
    event.currentTarget.setPointerCapture(event.pointerId);
  };

  const onPointerMove = (event: PointerEvent) => {
    const before = fingers.current.get(event.pointerId);
    if (before === undefined) return;
    const now = locate(event);
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    fingers.current.set(event.pointerId, now);
    moved.current += Math.hypot(now.x - before.x, now.y - before.y);
    if (other !== undefined) {
      const spread = (point: Point) => Math.max(1, Math.hypot(point.x - other.x, point.y - other.y));
      const middle = { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 };
      setView(zoomAbout(view, spread(now) / spread(before), middle, stage, photo));
    } else if (moved.current > TAP_SLACK) {
      setView(panBy(view, now.x - before.x, now.y - before.y, stage, photo));
    }
  };

  const onPointerUp = (event: PointerEvent) => {
    const last = fingers.current.get(event.pointerId);
    fingers.current.delete(event.pointerId);
    if (last === undefined || fingers.current.size > 0 || moved.current > TAP_SLACK) return;
    const place = photoPlace(view, stage, photo);
    const pxPerDot = photo.width / place.width;
    onTap((last.y - place.top) * pxPerDot, (last.x - place.left) * pxPerDot, pxPerDot);
  };

  const onPointerCancel = (event: PointerEvent) => {
    fingers.current.delete(event.pointerId);
    moved.current = Number.POSITIVE_INFINITY;
  };

  const middle = { x: stage.width / 2, y: stage.height / 2 };
  return {
    ready,
    view,
    place: ready ? photoPlace(view, stage, photo) : null,
    pointerHandlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel },
    enlarge: (factor: number) => setView(zoomAbout(view, factor, middle, stage, photo)),
    fit: () => setView(WHOLE_PHOTO),
    /** Brings a place of the photo into view, as when a stone is reached by keyboard. */
    reveal: (x: number, y: number) => {
      if (view.zoom > 1) setView(clampView({ zoom: view.zoom, x, y }, stage, photo));
    },
  };
}
