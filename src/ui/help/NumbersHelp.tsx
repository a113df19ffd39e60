import { Fragment } from 'react';
import { ceilingGu60 } from '../../grading/ceilingGu60';
import type { MaterialName } from '../../grading/materials';
import { refractiveIndex } from '../../grading/refractiveIndex';
import { plainNumber } from '../../texts/plainNumber';
import { speech } from '../../texts/speech';
import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';
import { useHelpTexts } from './useHelpTexts';

const ceilingOf = (material: MaterialName) => plainNumber(ceilingGu60(refractiveIndex(material).n));

/** How each number is made, in plain words. */
export function NumbersHelp() {
  const { numbers, captions } = useHelpTexts();
  const { texts, length } = speech();
  const inInches = length === 'inch';
  const ceilings = [ceilingOf('agate'), ceilingOf('fluorite'), ceilingOf('corundum')] as const;
  const explained = [
    [numbers.highlight, numbers.aboutHighlight],
    [numbers.gloss, numbers.aboutGloss],
    [numbers.interval, numbers.aboutInterval],
    [numbers.ceiling, numbers.aboutCeiling(...ceilings)],
    [numbers.smoothness, numbers.aboutSmoothness(inInches)],
    [numbers.confidence, numbers.aboutConfidence],
  ] as const;
  return (
    <section aria-labelledby="help-numbers">
      <HelpHeading id="numbers" />
      <h4>{numbers.ball}</h4>
      <div className="help-beside">
        <HelpPicture name="ball" caption={captions.ball} />
        <p>{numbers.aboutBall(inInches ? texts.page.inches : texts.page.millimeters)}</p>
      </div>
      {explained.map(([heading, text]) => (
        <Fragment key={heading}>
          <h4>{heading}</h4>
          <p>
            <Rich text={text} />
          </p>
        </Fragment>
      ))}
    </section>
  );
}
