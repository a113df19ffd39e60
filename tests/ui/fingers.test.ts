import { expect, it } from 'vitest';
import { createFingers } from '../../src/ui/tray/fingers';

it('takes a short touch for a tap, also when a wet thumb slips a little', () => {
  const fingers = createFingers();
  fingers.press(1, { x: 10, y: 10 });
  expect(fingers.move(1, { x: 14, y: 12 })).toBeNull();
  expect(fingers.lift(1)).toEqual({ kind: 'tap', at: { x: 14, y: 12 } });
});

it('takes a longer way for dragging, and no tap follows', () => {
  const fingers = createFingers();
  fingers.press(1, { x: 10, y: 10 });
  expect(fingers.move(1, { x: 40, y: 5 })).toEqual({ kind: 'pan', dx: 30, dy: -5 });
  expect(fingers.lift(1)).toBeNull();
});

it('zooms about the middle of two fingers by as much as they spread', () => {
  const fingers = createFingers();
  fingers.press(1, { x: 100, y: 100 });
  fingers.press(2, { x: 200, y: 100 });
  expect(fingers.move(2, { x: 300, y: 100 })).toEqual({ kind: 'pinch', factor: 2, at: { x: 200, y: 100 } });
  expect(fingers.lift(2)).toBeNull();
  expect(fingers.lift(1)).toBeNull();
});

it('means nothing when the system takes the finger away or it was never down', () => {
  const fingers = createFingers();
  expect(fingers.move(7, { x: 1, y: 1 })).toBeNull();
  expect(fingers.lift(7)).toBeNull();
  fingers.press(1, { x: 10, y: 10 });
  fingers.lose(1);
  expect(fingers.lift(1)).toBeNull();
});
