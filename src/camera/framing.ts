import type { PlaceMark } from '../image/notice';
import { type AdviceCode, frameAdvice } from './frameAdvice';
import { type FrameChecks, frameChecks } from './frameChecks';
import { type FrameSketch, hasChanged } from './frameSketch';
import type { FramedStone, FrameKnowledge, Preview } from './preview';

/** What the frames so far have shown. */
export interface Framing {
  /** The last frame; null before the first. */
  readonly preview: Preview | null;
  readonly checks: FrameChecks | null;
  /** Stones outlined in it or, the camera at rest since, in a frame before; null while there are none to show. */
  readonly stones: readonly FramedStone[] | null;
  /** Outlines to be drawn: those, or the last ones moved along with the ball while the camera moves. */
  readonly shown: readonly FramedStone[] | null;
  /** The sentence shown. */
  readonly advice: AdviceCode;
  /** What the last frame alone calls for. */
  readonly lastAdvice: AdviceCode;
  /** Where the ball was when the stones were outlined, and the frame in which they were. */
  readonly outlinedAt: PlaceMark | null;
  readonly outlinedIn: FrameSketch | null;
  /** Whether something in the picture was moved since. */
  readonly isChanged: boolean;
  /** Frames since. */
  readonly age: number;
  /** Whether the ball lay in the last two frames at one place. */
  readonly isAtRest: boolean;
  /** Frames looked at. */
  readonly looks: number;
}

/** Before the first frame. */
export const NO_FRAMING: Framing = {
  preview: null,
  checks: null,
  stones: null,
  shown: null,
  advice: 'looking',
  lastAdvice: 'looking',
  outlinedAt: null,
  outlinedIn: null,
  isChanged: false,
  age: 0,
  isAtRest: false,
  looks: 0,
};

/** A ball that is displaced by more has moved, share of the frame's longer side: outlines would visibly be off. */
const MOVED_SHARE = 0.006;
/** A ball as much larger or smaller is seen from elsewhere, ln units: outlines no longer fit. */
const SAME_SIZE = 0.05;
/** Stones are outlined anew after so many frames where something but the ball was moved, and after so many in any case. */
export const OUTLINE_EVERY = { changed: 12, atLeast: 60 };
/** Every so often the ball is looked for everywhere, should another thing have been taken for it. */
const SEARCH_EVERY = 25;
/** Lights come and go slowly: they are looked for in one frame of so many, since looking takes a third of its time. */
export const CHECK_LAMP_EVERY = 4;

/**
 * What the next look needs to know: while the camera moves only the ball is followed, which is fast; once it rests,
 * the stones are outlined. Without a ball they are whenever the picture changes.
 *
 * @param framing - What the frames so far have shown.
 * @param tray - Ball and rig.
 */
export function nextLook(framing: Framing, tray: Pick<FrameKnowledge, 'ballMm' | 'rig'>): FrameKnowledge {
  const { preview, stones, isAtRest, isChanged, age, looks } = framing;
  const ball = preview?.ball ?? null;
  const outlineAfter = isChanged ? OUTLINE_EVERY.changed : OUTLINE_EVERY.atLeast;
  const isSearched = looks % SEARCH_EVERY === SEARCH_EVERY - 1;
  return {
    ...tray,
    ball: isSearched ? null : ball,
    outline: (tray.ballMm === null || isAtRest) && (stones === null || age >= outlineAfter),
    checkLamp: looks % CHECK_LAMP_EVERY === 0,
  };
}

/**
 * Takes a look in: outlines stay while the ball stays where it was, and the sentence changes only when two frames in
 * a row call for the same, since one that flickers can neither be read nor spoken.
 *
 * @param before - What the frames before had shown.
 * @param look - What the new one shows; what was not looked for in it is as it was.
 * @param shotPx - Longer side of the photo that would be taken, pixels.
 */
export function framedWith(before: Framing, look: Preview, shotPx: number): Framing {
  const preview: Preview = {
    ...look,
    secondLight: look.secondLight ?? before.preview?.secondLight ?? null,
    lampPartly: look.lampPartly ?? before.preview?.lampPartly ?? null,
  };
  const mostPx = MOVED_SHARE * Math.max(preview.widthPx, preview.heightPx);
  const isNear = (place: PlaceMark | null) => isWithin(place, preview.ball, mostPx);
  const isChanged = before.outlinedIn !== null && hasChanged(before.outlinedIn, preview.sketch);
  const isSame = preview.ballWanted ? isNear(before.outlinedAt) : !isChanged;
  const isKept = preview.stones === null && before.stones !== null && isSame;
  const stones = isKept ? before.stones : preview.stones;
  // Without a ball the next frame is outlined: until then those of this one stay.
  const shown = stones ?? (preview.ballWanted ? movedAlong(before, preview.ball) : before.stones);
  const checks = frameChecks(preview, shotPx);
  const lastAdvice = frameAdvice(preview, checks, stones);
  const isSure = lastAdvice === before.lastAdvice || before.advice === 'looking';
  return {
    preview,
    checks,
    stones,
    shown,
    advice: isSure ? lastAdvice : before.advice,
    lastAdvice,
    outlinedAt: isKept ? before.outlinedAt : stones && preview.ball,
    outlinedIn: isKept ? before.outlinedIn : stones && preview.sketch,
    isChanged: isKept && isChanged,
    age: isKept ? before.age + 1 : 0,
    isAtRest: isNear(before.preview?.ball ?? null),
    looks: before.looks + 1,
  };
}

/** Outlines of the frame before, as far as the ball went since; null when it shows another size, as from elsewhere. */
function movedAlong({ preview, shown }: Framing, ball: PlaceMark | null): Framing['shown'] {
  const last = preview?.ball ?? null;
  if (shown === null || last === null || ball === null) return null;
  if (Math.abs(Math.log(ball.radiusPx / last.radiusPx)) > SAME_SIZE) return null;
  const [down, right] = [ball.row - last.row, ball.column - last.column];
  return shown.map(({ outline, cutOff }) => ({
    outline: outline.map(([row, column]) => [row + down, column + right] as const),
    cutOff,
  }));
}

function isWithin(one: PlaceMark | null, other: PlaceMark | null, mostPx: number): boolean {
  if (one === null || other === null) return false;
  return Math.hypot(one.row - other.row, one.column - other.column) <= mostPx;
}
