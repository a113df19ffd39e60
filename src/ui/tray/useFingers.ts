import { type PointerEvent, useRef } from 'react';
import { createFingers, type Gesture, type Place } from './fingers';

function placeOn(event: PointerEvent): Place {
  const box = event.currentTarget.getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
}

/** Handlers for the stage that turn pointers into gestures. */
export function useFingers(onGesture: (gesture: Gesture) => void) {
  const fingers = useRef(createFingers()).current;
  const tell = (gesture: Gesture | null) => {
    if (gesture !== null) onGesture(gesture);
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      fingers.press(event.pointerId, placeOn(event));
    },
    onPointerMove: (event: PointerEvent) => tell(fingers.move(event.pointerId, placeOn(event))),
    onPointerUp: (event: PointerEvent) => tell(fingers.lift(event.pointerId)),
    onPointerCancel: (event: PointerEvent) => fingers.lose(event.pointerId),
  };
}
