import type { StoneReport } from '../../src/analysis/report';
import type { StoneFlaws } from '../../src/analysis/stoneFlaws';
import { gradeStone } from '../../src/grading/gradeStone';
import type { MeasuredFlaw } from '../../src/grading/measuredStone';
import type { Action } from '../../src/grading/opinion';
import type { Step } from '../../src/grading/steps';
import type { TrueStone } from './truth';

/** What is said of a stone, and what its true flaws would have said; by flaws and default limits alone. */
export interface StoneActions {
  readonly step: Step;
  readonly said: Action;
  readonly right: Action;
}

/** Grades a stone by what was found and by what is true of the side in view. */
export function actionsOn(
  read: StoneFlaws,
  truth: TrueStone,
  { id }: Pick<StoneReport, 'id'>,
  step: Step,
  mmPerPx: number,
): StoneActions {
  const act = (flaws: readonly MeasuredFlaw[]) => {
    const stone = {
      id,
      lengthMm: 25,
      widthMm: 20,
      areaMm2: read.inspectedCm2 * 100,
      cutOff: false,
      highlight: null,
      glossBound: null,
      flaws,
      inspectedCm2: read.inspectedCm2,
    };
    return gradeStone(stone, { step: 'coarse', material: null, limits: null, mmPerPx }).verdict.action;
  };
  const real = truth.flaws
    .filter(({ visible }) => visible)
    .map(
      ({ kind, diameterMm, lengthMm }): MeasuredFlaw => ({
        kind,
        ...(diameterMm === undefined ? {} : { diameterMm }),
        ...(lengthMm === undefined ? {} : { lengthMm }),
        confidence: 1,
      }),
    );
  return { step, said: act(read.flaws), right: act(real) };
}

/** Verdict safety on the coarse trays: nothing over the limits advances, sound stones are not sent back. */
export function safetyRows(all: readonly StoneActions[]): { met: boolean; text: string }[] {
  const coarse = all.filter(({ step }) => step === 'coarse');
  const bad = coarse.filter(({ right }) => right !== 'advance');
  const good = coarse.filter(({ right }) => right === 'advance');
  const share = (part: readonly unknown[], whole: readonly unknown[]) =>
    part.length / Math.max(1, whole.length);
  const kept = share(
    bad.filter(({ said }) => said !== 'advance'),
    bad,
  );
  const sentBack = share(
    good.filter(({ said }) => said !== 'advance' && said !== 'look-closer'),
    good,
  );
  const closer = share(
    coarse.filter(({ said }) => said === 'look-closer'),
    coarse,
  );
  return [
    {
      met: kept >= 0.99,
      text: `stones over the limits not told to advance: ${kept.toFixed(3)} of ${bad.length} (target ≥ 0.99)`,
    },
    {
      met: sentBack <= 0.05,
      text: `stones within the limits sent back: ${sentBack.toFixed(3)} of ${good.length} (target ≤ 0.05)`,
    },
    { met: closer <= 0.1, text: `look closer: ${closer.toFixed(3)} of ${coarse.length} (target ≤ 0.10)` },
  ];
}
