import type { HighlightReport } from '../../analysis/report';
import type { StoneGrade } from '../../grading/gradeStone';
import { GlossScale } from './GlossScale';
import { HighlightChart } from './HighlightChart';
import { ShineTable } from './ShineTable';
import { furtherWords, skinWords } from './skinWords';

interface Props {
  readonly gloss: StoneGrade['gloss'];
  readonly gu60AtMost: number | null;
  readonly further: StoneGrade['furtherGloss'];
  readonly skin: StoneGrade['skin'];
  readonly highlight: HighlightReport | null;
  /** True when it was not read because lamp or camera moved. */
  readonly withheld: boolean | 'second-light';
}

/** How much the stone shines, how sure that is, and how much its material could. */
export function GlossPart({ gloss, gu60AtMost, further, skin, highlight, withheld }: Props) {
  if (gloss === null || highlight === null) {
    return (
      <section>
        <h3>Gloss</h3>
        <p>
          {withheld
            ? withheld === 'second-light'
              ? 'Not read: its highlight lies where it mirrors a second light.'
              : 'Not read: lamp or camera are not where they were when they were remembered.'
            : 'No highlight could be read on this stone: it is dull, or its top faces away from lamp and camera.'}
          {gu60AtMost !== null &&
            ` It has at most about ${gu60AtMost.toFixed(gu60AtMost < 10 ? 1 : 0)} gloss units at 60°.`}
        </p>
      </section>
    );
  }
  const round = (value: number) => value.toFixed(value < 10 ? 1 : 0);
  const reached = Math.round(100 * gloss.shareOfCeiling);
  return (
    <section>
      <h3>Gloss, estimated</h3>
      <p>
        <span className="big-number">{gloss.finish}</span>
        {', '}gloss level {gloss.level}
        <br />
        {round(gloss.gu60)} gloss units at 60° ({round(gloss.gu60Low)} to {round(gloss.gu60High)}): {reached}{' '}
        % of what this material can reach. A perfect polish of it reads {round(gloss.ceilingGu60)}.
      </p>
      <GlossScale gu={gloss.gu60} low={gloss.gu60Low} high={gloss.gu60High} ceiling={gloss.ceilingGu60} />
      <ShineTable gloss={gloss} bodyReflectance={highlight.bodyReflectance ?? null} />
      <h3>Its highlight</h3>
      {[...skinWords(skin), furtherWords(further)]
        .filter((words) => words !== null)
        .map((words) => (
          <p key={words}>{words}</p>
        ))}
      <HighlightChart profile={highlight.profile} />
    </section>
  );
}
