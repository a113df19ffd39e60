import { useId, useState } from 'react';
import type { Step } from '../../grading/steps';
import type { RecordId } from '../../journal/records';
import { dayToday } from '../../state/dayToday';
import { texts } from '../../texts/speech';
import { Field } from '../parts/Field';
import { useJournal } from '../stores';

/** Where a check is to be kept. */
export interface ChosenBatch {
  /** Null for a new batch. */
  readonly batch: RecordId | null;
  /** Of a new batch; empty for one named after the day. */
  readonly name: string;
  /** The check that the photo shows from another side; null for a check of its own. */
  readonly faceOf: RecordId | null;
  /** The check it could be another side of: that of the same batch, day and step; null without one. */
  readonly sideOf: RecordId | null;
}

interface Said {
  readonly batch?: RecordId | null;
  readonly name?: string;
  readonly isOtherSide?: boolean;
}

/** The batch checked last unless another is chosen, and a second photo of a day shows the other side unless it is said not to. */
export function useChosenBatch(step: Step): [ChosenBatch, (said: Said | null) => void] {
  const batches = useJournal((state) => state.batches);
  const [said, setSaid] = useState<Said>({});
  const batch =
    said.batch === undefined ? (batches.find(({ isOver }) => !isOver)?.batch ?? null) : said.batch;
  const last = batches.find((one) => one.batch === batch)?.last ?? null;
  const sideOf = last !== null && last.day === dayToday() && last.step === step ? last.check : null;
  const faceOf = (said.isOtherSide ?? true) ? sideOf : null;
  return [
    { batch, name: said.name ?? '', faceOf, sideOf },
    (more) => setSaid(more === null ? {} : { ...said, ...more }),
  ];
}

interface Props {
  readonly chosen: ChosenBatch;
  readonly onChoose: (said: Said) => void;
}

/** The batch that a check belongs to: one that is there or a new one. */
export function BatchChoice({ chosen: { batch, name, faceOf, sideOf }, onChoose }: Props) {
  const batches = useJournal((state) => state.batches);
  const sideId = useId();
  const words = texts().keep;
  return (
    <>
      <Field label={words.batch}>
        {(id) => (
          <select
            id={id}
            value={batch ?? NEW}
            onChange={({ target }) => onChoose({ batch: target.value === NEW ? null : target.value })}
          >
            {batches.map((known) => (
              <option key={known.batch} value={known.batch}>
                {known.name}
              </option>
            ))}
            <option value={NEW}>{words.newBatch}</option>
          </select>
        )}
      </Field>
      {batch === null && (
        <Field label={words.itsName}>
          {(id) => (
            <input
              id={id}
              type="text"
              value={name}
              maxLength={60}
              placeholder={words.batchOf(dayToday())}
              onChange={({ target }) => onChoose({ name: target.value })}
            />
          )}
        </Field>
      )}
      {sideOf !== null && (
        <label className="tick" htmlFor={sideId}>
          <input
            id={sideId}
            type="checkbox"
            checked={faceOf !== null}
            onChange={({ target }) => onChoose({ isOtherSide: target.checked })}
          />
          {words.otherSide}
        </label>
      )}
    </>
  );
}

const NEW = 'new';
