/** A place on the stage, CSS pixels from its upper-left corner. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** What the fingers on the stage want. */
export type Gesture =
  | { readonly kind: 'pan'; readonly dx: number; readonly dy: number }
  | { readonly kind: 'pinch'; readonly factor: number; readonly at: Place }
  | { readonly kind: 'tap'; readonly at: Place };

/** A finger that moved less than this many CSS pixels tapped; more, and it dragged. */
const TAP_SLACK = 9;

/** Follows fingers, pens and the mouse over the stage and says what they want. */
export function createFingers() {
  const down = new Map<number, Place>();
  let movedPx = 0;

  return {
    press(id: number, at: Place): void {
      if (down.size === 0) movedPx = 0;
      down.set(id, at);
    },
    move(id: number, at: Place): Gesture | null {
      const before = down.get(id);
      if (before === undefined) return null;
      const other = [...down].find(([finger]) => finger !== id)?.[1];
      down.set(id, at);
      movedPx += Math.hypot(at.x - before.x, at.y - before.y);
      if (other !== undefined) {
        movedPx = Number.POSITIVE_INFINITY;
        const spread = (place: Place) => Math.max(1, Math.hypot(place.x - other.x, place.y - other.y));
        const middle = { x: (at.x + other.x) / 2, y: (at.y + other.y) / 2 };
        return { kind: 'pinch', factor: spread(at) / spread(before), at: middle };
      }
      return movedPx > TAP_SLACK ? { kind: 'pan', dx: at.x - before.x, dy: at.y - before.y } : null;
    },
    lift(id: number): Gesture | null {
      const at = down.get(id);
      down.delete(id);
      return at === undefined || down.size > 0 || movedPx > TAP_SLACK ? null : { kind: 'tap', at };
    },
    /** The system took the finger away, as when the page scrolls: nothing was meant. */
    lose(id: number): void {
      down.delete(id);
      movedPx = Number.POSITIVE_INFINITY;
    },
  };
}
