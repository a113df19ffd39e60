import { useEffect, useId, useState } from 'react';
import {
  CAUTION_AT,
  isWashedOut,
  soapRun,
  WASH_OUT_ITEMS,
  type WashOutEvent,
  type WashOutItem,
  type WashOut as WashOutState,
} from '../../recipes/washOut';
import { texts } from '../../texts/speech';
import { clockWords } from './planWords';
import { takeFocus } from './takeFocus';

interface WashOutProps {
  readonly washOut: WashOutState;
  readonly onEvent: (event: WashOutEvent) => void;
  /** True when it appears in answer to a tap. */
  readonly takesFocus?: boolean;
}

/** What is done before finer grit goes in, to be ticked off; each caution stands where it matters. */
export function WashOut({ washOut, onEvent, takesFocus = false }: WashOutProps) {
  const words = texts().plan;
  const { from, to, ticked } = washOut;
  const title = useId();
  return (
    <section className="wash-out" aria-labelledby={title}>
      <h4 id={title} className="wash-out-title" tabIndex={-1} ref={takeFocus(takesFocus)}>
        {words.washOutOf(from, to)}
      </h4>
      <p>{words.washOutWhy}</p>
      <ol>
        {WASH_OUT_ITEMS.map((item) => (
          <WashOutRow key={item} item={item} washOut={washOut} onEvent={onEvent} />
        ))}
      </ol>
      <p role="status" className="wash-out-state">
        {isWashedOut(washOut) ? words.washOutDone : words.ticked(ticked.length, WASH_OUT_ITEMS.length)}
      </p>
    </section>
  );
}

function WashOutRow({ item, washOut, onEvent }: WashOutProps & { item: WashOutItem }) {
  const isTicked = washOut.ticked.includes(item);
  const about = CAUTION_AT[item];
  const caution = about && texts().verdicts.cautions[about];
  const cautionId = useId();
  return (
    <li className="wash-out-row" data-ticked={isTicked}>
      <label className="tick">
        <input
          type="checkbox"
          checked={isTicked}
          aria-describedby={caution && !isTicked ? cautionId : undefined}
          onChange={() => onEvent({ type: isTicked ? 'untick' : 'tick', item })}
        />
        <span>{texts().plan.washOutItems[item]}</span>
      </label>
      {caution && !isTicked && (
        <p className="hazard" id={cautionId}>
          {caution}
        </p>
      )}
      {item === 'soap' && !isTicked && <SoapClock washOut={washOut} onEvent={onEvent} />}
    </li>
  );
}

/** How long the detergent run still takes. */
function SoapClock({ washOut, onEvent }: WashOutProps) {
  const words = texts().plan;
  const nowMs = useNow();
  // What was started a moment ago is younger than the time last looked at.
  const run = soapRun(washOut, Math.max(nowMs, washOut.soapSinceMs ?? 0));
  const start = () => onEvent({ type: 'soap', atMs: Date.now() });
  if (run === null) {
    return (
      <button type="button" className="button" onClick={start}>
        {words.soapStart}
      </button>
    );
  }
  return (
    <p className="soap-clock">
      <span>
        {run.leftMs > 0
          ? words.soapLeft(Math.ceil(run.leftMs / 60_000), clockWords(run.endsMs), clockWords(run.latestMs))
          : words.soapLong(clockWords(run.endsMs), clockWords(run.latestMs))}
      </span>
      <button type="button" className="button button-quiet" onClick={start}>
        {words.soapAgain}
      </button>
    </p>
  );
}

const TICK_MS = 15_000;

/** The time, milliseconds since 1970, a few times a minute. */
function useNow(): number {
  const [nowMs, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), TICK_MS);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
}
