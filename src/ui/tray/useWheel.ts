import { type RefObject, useEffect, useRef } from 'react';
import type { Place } from './fingers';

/** Turning the wheel this many units enlarges or reduces e-fold. */
const UNITS_PER_E = 400;

/** Turns the wheel over the stage into zooming, and keeps the page from scrolling meanwhile. */
export function useWheel(
  ref: RefObject<HTMLElement | null>,
  onZoom: (factor: number, at: Place) => void,
): void {
  const latest = useRef(onZoom);
  latest.current = onZoom;
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      const at = { x: event.clientX - box.left, y: event.clientY - box.top };
      latest.current(Math.exp(-event.deltaY / UNITS_PER_E), at);
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [ref]);
}
