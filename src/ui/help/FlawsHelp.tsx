import { lengthWords } from '../../texts/measures';
import { speech } from '../../texts/speech';
import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';
import { useHelpTexts } from './useHelpTexts';

/** What the four flaws look like and what becomes of them. */
export function FlawsHelp() {
  const { flaws } = useHelpTexts();
  return (
    <section aria-labelledby="help-flaws">
      <HelpHeading id="flaws" />
      <p>{flaws.intro}</p>
      <Pits />
      <Fractures />
      <Chips />
      <Scratches />
    </section>
  );
}

function Pits() {
  const { flaws, captions } = useHelpTexts();
  return (
    <section aria-labelledby="help-pits">
      <HelpHeading id="pits" />
      <p>{flaws.pits}</p>
      <p>
        <Rich text={flaws.pitsGoOn} />
      </p>
      <div className="help-pictures">
        <HelpPicture name="pit" caption={captions.pit(lengthWords(1.7))} />
        <HelpPicture name="pits" isMarked caption={captions.pits} />
      </div>
    </section>
  );
}

function Fractures() {
  const { flaws, captions } = useHelpTexts();
  return (
    <section aria-labelledby="help-fractures">
      <HelpHeading id="fractures" />
      <p>{flaws.fractures}</p>
      <p>
        <Rich text={flaws.fracturesGoOn} />
      </p>
      <div className="help-pictures">
        <HelpPicture name="fracture" caption={captions.fracture(lengthWords(7))} />
        <HelpPicture name="fracture-long" isMarked caption={captions['fracture-long']} />
      </div>
    </section>
  );
}

function Chips() {
  const { flaws, captions } = useHelpTexts();
  return (
    <section aria-labelledby="help-chips">
      <HelpHeading id="chips" />
      <p>{flaws.chips}</p>
      <p>
        <Rich text={flaws.chipsGoOn} />
      </p>
      <div className="help-pictures">
        <HelpPicture name="chip" caption={captions.chip(lengthWords(7))} />
        <HelpPicture name="chip-red" caption={captions['chip-red']} />
      </div>
    </section>
  );
}

function Scratches() {
  const { flaws, captions } = useHelpTexts();
  const width = speech().length === 'mm' ? null : lengthWords(0.1);
  return (
    <section aria-labelledby="help-scratches">
      <HelpHeading id="scratches" />
      <p>{flaws.scratches}</p>
      <p>
        <Rich text={flaws.scratchesGoOn} />
      </p>
      <div className="help-pictures">
        <HelpPicture name="scratches" isMarked caption={captions.scratches(width)} />
        <HelpPicture name="scratches-agate" caption={captions['scratches-agate']} />
      </div>
    </section>
  );
}
