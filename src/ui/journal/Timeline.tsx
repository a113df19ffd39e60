import { useMemo } from 'react';
import type { MaterialName } from '../../grading/materials';
import type { StoneCheck } from '../../history/batchHistory';
import { checkGrade } from '../../history/checkGrade';
import { daysBetween } from '../../history/daysBetween';
import { densityNumber, densityUnit, lengthNumber, lengthUnit } from '../../texts/measures';
import { plainNumber } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { axisScale } from '../stone/chartScale';
import { useSpeech } from '../useSpeech';

interface Point {
  readonly day: number;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

/** Pits, fractures, size and gloss from check to check, each on a strip of its own over the same days. */
export function Timeline({
  checks,
  material,
}: {
  checks: readonly StoneCheck[];
  material: MaterialName | null;
}) {
  const speech = useSpeech();
  const words = speech.texts.journal.timeline;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language or unit says it in other words
  const strips = useMemo(() => stripsOf(checks, material), [checks, material, speech]);
  return (
    <section aria-labelledby="timeline-title">
      <h3 id="timeline-title">{words.title}</h3>
      {strips.map((strip) => (
        <Strip key={strip.what} {...strip} />
      ))}
      <p className="timeline-days">
        <span>{checks[0]?.check.day}</span>
        <span>{checks.at(-1)?.check.day}</span>
      </p>
    </section>
  );
}

interface StripProps {
  readonly what: string;
  readonly unit: string;
  /** Writes a value in that unit. */
  readonly written: (value: number) => string;
  readonly points: readonly Point[];
  /** Line that the value should come under, or stay above; null without one. */
  readonly limit: number | null;
  /** Says what is asked for, such as "at most 3"; empty without a limit. */
  readonly limitWords: string;
}

function stripsOf(checks: readonly StoneCheck[], material: MaterialName | null): StripProps[] {
  const words = texts().journal.timeline;
  const written = (mm: number) => lengthNumber(mm);
  const { limits } = checks.at(-1)!.check;
  const start = checks[0]!.check.day;
  const rows = checks.map((seen) => {
    const { gloss, pitsPerCm2, fractureMm } = checkGrade(seen, material);
    const lengthMm = Math.max(...seen.faces.map(({ stone }) => stone.lengthMm));
    return { day: daysBetween(start, seen.check.day), gloss, pitsPerCm2, fractureMm, lengthMm };
  });
  const glosses = rows.flatMap(({ day, gloss }) =>
    gloss ? [{ day, value: gloss.gu60, low: gloss.gu60Low, high: gloss.gu60High }] : [],
  );
  const of = (figure: (row: (typeof rows)[number]) => number) =>
    rows.map((row): Point => ({ day: row.day, value: figure(row) }));
  return [
    {
      what: words.pits,
      ...{ unit: densityUnit(), written: densityNumber, points: of((row) => row.pitsPerCm2) },
      ...{ limit: limits.maxPitsPerCm2, limitWords: words.most(densityNumber(limits.maxPitsPerCm2)) },
    },
    {
      what: words.fractures,
      ...{ unit: lengthUnit(), written, points: of((row) => row.fractureMm) },
      ...{ limit: limits.maxFractureMm, limitWords: words.most(written(limits.maxFractureMm)) },
    },
    {
      what: words.length,
      ...{ unit: lengthUnit(), written, points: of((row) => row.lengthMm) },
      ...{ limit: limits.minLengthMm, limitWords: words.least(written(limits.minLengthMm)) },
    },
    ...(glosses.length > 0
      ? [
          {
            what: words.gloss,
            ...{ unit: words.glossUnits, written: plainNumber, points: glosses, limit: null, limitWords: '' },
          },
        ]
      : []),
  ];
}

const HEIGHT = 64;

function Strip({ what, unit, written, points, limit, limitWords }: StripProps) {
  const top = Math.max(...points.map(({ value, high }) => high ?? value), limit ?? 0, 0.1) * 1.1;
  const x = axisScale([0, Math.max(1, points.at(-1)!.day)], [8, 352]);
  const y = axisScale([0, top], [HEIGHT - 6, 6]);
  const [first, last] = [points[0]!, points.at(-1)!];
  const line = points.map(({ day, value }, i) => `${i === 0 ? 'M' : 'L'}${x(day)} ${y(value)}`).join('');
  const words = texts().journal.timeline;
  const [from, to] = [written(first.value), written(last.value)];
  const said = words.said(what, from, to, unit, limit === null ? null : limitWords);
  return (
    <figure className="timeline-strip">
      <figcaption>
        <strong>{what}</strong>{' '}
        <span className="fine">
          {from} → {to} {unit}
          {limit !== null && `, ${words.brokenLine(limitWords)}`}
        </span>
      </figcaption>
      <svg viewBox={`0 0 360 ${HEIGHT}`} role="img" aria-label={said}>
        <path className="strip-ground" d={`M8 ${HEIGHT - 6}H352`} />
        {limit !== null && <path className="strip-limit" d={`M8 ${y(limit)}H352`} />}
        {points.map(
          ({ day, low, high }) =>
            low !== undefined &&
            high !== undefined && (
              <path key={day} className="strip-between" d={`M${x(day)} ${y(low)}V${y(high)}`} />
            ),
        )}
        <path className="strip-line" d={line} />
        {points.map(({ day, value }) => (
          <circle key={day} className="strip-dot" cx={x(day)} cy={y(value)} r="4" />
        ))}
      </svg>
    </figure>
  );
}
