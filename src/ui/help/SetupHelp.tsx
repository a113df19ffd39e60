import { benchLengthWords } from '../../texts/measures';
import { Rich } from '../parts/Rich';
import { HelpHeading } from './HelpHeading';
import { RigDrawing } from './RigDrawing';
import { useHelpTexts } from './useHelpTexts';

/** How to set up lamp, ball and camera. */
export function SetupHelp() {
  const { setup } = useHelpTexts();
  const steps = [
    setup.lamp(benchLengthWords(150), benchLengthWords(600)),
    ...[setup.camera, setup.tray, setup.ball, setup.stones, setup.dark, setup.remember],
  ];
  return (
    <section aria-labelledby="help-setup">
      <HelpHeading id="setup" />
      <RigDrawing />
      <ol className="help-list help-steps">
        {steps.map((step) => (
          <li key={step}>
            <Rich text={step} />
          </li>
        ))}
      </ol>
    </section>
  );
}
