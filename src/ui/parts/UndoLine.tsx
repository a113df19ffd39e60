import { useEffect, useState } from 'react';
import { texts } from '../../texts/speech';
import { useUndo } from '../stores';

/** Long enough to dry a hand and read, ms. */
const OFFERED_MS = 15_000;

/** What was just done and the way back from it; stays while it is held or focused. */
export function UndoLine() {
  const { last, undo, forget } = useUndo();
  const [held, setHeld] = useState(false);
  useEffect(() => {
    if (last === null || held) return;
    const timer = window.setTimeout(forget, OFFERED_MS);
    return () => window.clearTimeout(timer);
  }, [last, held, forget]);
  return (
    <div role="status" className="undo-place">
      {last !== null && (
        <p
          className="undo-line"
          onFocus={() => setHeld(true)}
          onBlur={() => setHeld(false)}
          onPointerEnter={() => setHeld(true)}
          onPointerLeave={() => setHeld(false)}
        >
          <span>{last.said()}</span>
          <button type="button" className="button button-strong" onClick={undo}>
            {texts().page.undo}
          </button>
        </p>
      )}
    </div>
  );
}
