import { useEffect, useId, useState } from 'react';
import { CAUTIONS } from '../../grading/cautions';
import {
  CAUTION_AT,
  isWashedOut,
  soapRun,
  WASH_OUT_ITEMS,
  type WashOutEvent,
  type WashOutItem,
  type WashOut as WashOutState,
} from '../../recipes/washOut';
import { clockWords, PLAN_WORDS, stepTitle, WASH_OUT_WORDS } from './planWords';
import { takeFocus } from './takeFocus';

interface WashOutProps {
  readonly washOut: WashOutState;
  readonly onEvent: (event: WashOutEvent) => void;
  /** True when it appears in answer to a tap. */
  readonly takesFocus?: boolean;
}

/** What is done before finer grit goes in, to be ticked off; each caution stands where it matters. */
export function WashOut({ washOut, onEvent, takesFocus = false }: WashOutProps) {
  const { from, to, ticked } = washOut;
  const title = useId();
  return (
    <section className="wash-out" aria-labelledby={title}>
      <h4 id={title} className="wash-out-title" tabIndex={-1} ref={takeFocus(takesFocus)}>
        {PLAN_WORDS.washOut}: {stepTitle(from).toLowerCase()} off, before {stepTitle(to).toLowerCase()}
      </h4>
      <p>{PLAN_WORDS.washOutWhy}</p>
      <ol>
        {WASH_OUT_ITEMS.map((item) => (
          <WashOutRow key={item} item={item} washOut={washOut} onEvent={onEvent} />
        ))}
      </ol>
      <p role="status" className="wash-out-state">
        {isWashedOut(washOut)
          ? PLAN_WORDS.washOutDone
          : `${ticked.length} of ${WASH_OUT_ITEMS.length} ticked.`}
      </p>
    </section>
  );
}

function WashOutRow({ item, washOut, onEvent }: WashOutProps & { item: WashOutItem }) {
  const isTicked = washOut.ticked.includes(item);
  const caution = CAUTIONS.find(({ about }) => about === CAUTION_AT[item]);
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
        <span>{WASH_OUT_WORDS[item]}</span>
      </label>
      {caution && !isTicked && (
        <p className="hazard" id={cautionId}>
          {caution.text}
        </p>
      )}
      {item === 'soap' && !isTicked && <SoapClock washOut={washOut} onEvent={onEvent} />}
    </li>
  );
}

/** How long the detergent run still takes. */
function SoapClock({ washOut, onEvent }: WashOutProps) {
  const nowMs = useNow();
  const run = soapRun(washOut, nowMs);
  const start = () => onEvent({ type: 'soap', atMs: Date.now() });
  if (run === null) {
    return (
      <button type="button" className="button" onClick={start}>
        {PLAN_WORDS.soapStart}
      </button>
    );
  }
  return (
    <p className="soap-clock">
      <span>
        {run.leftMs > 0
          ? `${Math.ceil(run.leftMs / 60_000)} minutes to go: stop between ${clockWords(run.endsMs)} and ${clockWords(run.latestMs)}.`
          : `Long enough since ${clockWords(run.endsMs)}: stop by ${clockWords(run.latestMs)}.`}
      </span>
      <button type="button" className="button button-quiet" onClick={start}>
        {PLAN_WORDS.soapAgain}
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
