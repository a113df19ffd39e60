import { HelpHeading } from './HelpHeading';
import { RigDrawing } from './RigDrawing';

/** How to set up lamp, ball and camera. */
export function SetupHelp() {
  return (
    <section aria-labelledby="help-setup">
      <HelpHeading id="setup" />
      <RigDrawing />
      <ol className="help-list help-steps">
        <li>
          <strong>One lamp.</strong> Small and bright. A lamp head 15 cm wide, 60 cm away, is right. Put it 25
          to 45° to the side of the camera. Switch every other light off.
        </li>
        <li>
          <strong>One camera,</strong> straight above the tray. Fix it: a stand, a shelf, a stack of books.
        </li>
        <li>
          <strong>A plain, matte tray,</strong> gray if you can.
        </li>
        <li>
          <strong>A polished dark glass ball</strong> among the stones. Measure its diameter and enter it
          under <em>Setup</em>.
        </li>
        <li>
          <strong>Dry stones,</strong> a finger apart. Water fills scratches and fakes a polish.
        </li>
        <li>
          <strong>Take it dark.</strong> The lamp’s white spot in the ball must not be washed out. If it is,
          add a shot two stops darker.
        </li>
        <li>
          <strong>Remember it.</strong> Press <em>Remember this lamp and camera</em>. Later photos are
          compared with it, and you are told when something moved.
        </li>
      </ol>
    </section>
  );
}
