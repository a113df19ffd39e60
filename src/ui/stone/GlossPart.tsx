import type { HighlightReport } from '../../analysis/report';
import type { StoneGrade } from '../../grading/gradeStone';
import { texts } from '../../texts/speech';
import { HelpLink } from '../parts/HelpLink';
import { Rich } from '../parts/Rich';
import { GlossScale } from './GlossScale';
import { glossNumber } from './glossNumber';
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
export function GlossPart(shown: Props) {
  const { gloss, further, skin, highlight } = shown;
  if (gloss === null || highlight === null) return <NoGloss {...shown} />;
  const { stone, verdicts } = texts();
  const [gu, low, high, ceiling] = [gloss.gu60, gloss.gu60Low, gloss.gu60High, gloss.ceilingGu60].map(
    glossNumber,
  ) as [string, string, string, string];
  const reached = String(Math.round(100 * gloss.shareOfCeiling));
  return (
    <section>
      <h3>
        {stone.glossEstimated} <HelpLink to="finishes" />
      </h3>
      <p>
        <span className="big-number">
          <Rich text={stone.finishAndLevel(verdicts.finishes[gloss.finish], gloss.level)} />
        </span>
        <br />
        {stone.glossReading(gu, low, high, reached, ceiling)}
      </p>
      <GlossScale gu={gloss.gu60} low={gloss.gu60Low} high={gloss.gu60High} ceiling={gloss.ceilingGu60} />
      <ShineTable gloss={gloss} bodyReflectance={highlight.bodyReflectance ?? null} />
      <h3>
        {stone.highlight} <HelpLink to="numbers" />
      </h3>
      {[...skinWords(skin), furtherWords(further)]
        .filter((words) => words !== null)
        .map((words) => (
          <p key={words}>{words}</p>
        ))}
      <HighlightChart profile={highlight.profile} />
    </section>
  );
}

/** Why no gloss was read, and what it is at most. */
function NoGloss({ withheld, gu60AtMost }: Props) {
  const { gloss, noGloss, glossAtMost } = texts().stone;
  const why = withheld === 'second-light' ? withheld : withheld ? 'moved' : 'dull';
  return (
    <section>
      <h3>{gloss}</h3>
      <p>
        {noGloss[why]}
        {gu60AtMost !== null && ` ${glossAtMost(glossNumber(gu60AtMost))}`}
      </p>
    </section>
  );
}
