import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';

/** What looks like a flaw and is none, and how to tell. */
export function PatternHelp() {
  return (
    <section aria-labelledby="help-pattern">
      <HelpHeading id="pattern" />
      <p>
        Bands, specks, grains, orbs and moss are color, not shape. They may be as dark as a pit and as thin as
        a crack. A thumb-nail glides over them. These five stones have no flaw at all:
      </p>
      <div className="help-pictures">
        <HelpPicture name="specks" alt="A matte red stone with several small dark spots, all of them flat.">
          Specks. Evenly dark, no lit side.
        </HelpPicture>
        <HelpPicture name="grains" alt="A stone of white, gray and black angular grains.">
          Grains. Hard edges, many alike.
        </HelpPicture>
        <HelpPicture name="bands" alt="A brown agate with many wavy light and dark bands.">
          Bands. They run on and keep their distance.
        </HelpPicture>
        <HelpPicture name="orbs" alt="A green stone with pale round spots, each with a ring and a core.">
          Orbs. Rings within rings.
        </HelpPicture>
        <HelpPicture name="moss" alt="A white stone with green, torn, cloudy patches.">
          Moss. Torn clouds of color.
        </HelpPicture>
      </div>
      <h4>Pit or pattern? Move the lamp</h4>
      <p>
        Carry the lamp a third of the way around the tray and take a second photo. Press{' '}
        <em>Add one with the lamp moved</em>. Pattern stays as it is. The shading of a hollow goes around with
        the lamp.
      </p>
      <div className="help-pictures">
        <HelpPicture
          name="lamp-here"
          alt="A pit and a dark speck on a white stone. The lamp stands at the lower right, and the pit is dark on that side."
        >
          The lamp at the lower right: the pit is dark there.
        </HelpPicture>
        <HelpPicture
          name="lamp-there"
          alt="The same pit and speck with the lamp at the top: now the upper side of the pit is dark, and the speck is as it was."
        >
          The lamp at the top: now the pit is dark at the top. The speck is as it was.
        </HelpPicture>
      </div>
    </section>
  );
}
