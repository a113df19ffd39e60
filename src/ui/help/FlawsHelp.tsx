import { Link } from 'wouter';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';

/** What the four flaws look like and what becomes of them. */
export function FlawsHelp() {
  return (
    <section aria-labelledby="help-flaws">
      <HelpHeading id="flaws" />
      <p>Four things keep a stone back. Each has its own mark on the picture.</p>
      <Pits />
      <Fractures />
      <Chips />
      <Scratches />
    </section>
  );
}

function Pits() {
  return (
    <section aria-labelledby="help-pits">
      <HelpHeading id="pits" />
      <p>
        A pit is a small hollow. The side toward the lamp lies in shadow, the far side catches light. Its
        floor is dull, even when the skin around it shines. It has the stone’s own color.
      </p>
      <p>
        Pits grind out: more time in coarse. Until then they hold grit. One grain carried into a finer step
        scratches the whole batch. <em>Marked with a ring.</em>
      </p>
      <div className="help-pictures">
        <HelpPicture
          name="pit"
          alt="A pit in a green stone: its upper side, toward the lamp, is dark, its lower side bright and dull. A dark brown speck beside it is flat."
        >
          A pit, 1.7 mm across. The brown spot at the left edge is a speck: no dark side, no bright side.
        </HelpPicture>
        <HelpPicture
          name="pits"
          isMarked
          alt="A pale quartz with five pits, each in a ring. Three black specks on it have no ring."
        >
          Five pits, marked. The three black specks are only color.
        </HelpPicture>
      </div>
    </section>
  );
}

function Fractures() {
  return (
    <section aria-labelledby="help-fractures">
      <HelpHeading id="fractures" />
      <p>
        A fracture is a crack: a thin, dark, crooked line. It does not follow the bands of the stone. Often
        its far lip catches light.
      </p>
      <p>
        Fractures often do not grind out, and may open further. A long one is a reason to saw the stone, break
        it there, or keep it as it is. <em>Marked with four corners.</em>
      </p>
      <div className="help-pictures">
        <HelpPicture
          name="fracture"
          alt="A dark, slightly crooked line runs across a green stone, one lip of it lit."
        >
          A fracture, 7 mm long.
        </HelpPicture>
        <HelpPicture
          name="fracture-long"
          isMarked
          alt="Two long, winding cracks on a stone of pink and green grains, each between four corners."
        >
          Two fractures, marked. Together they are far over the usual limit: set aside.
        </HelpPicture>
      </div>
    </section>
  );
}

function Chips() {
  return (
    <section aria-labelledby="help-chips">
      <HelpHeading id="chips" />
      <p>
        A chip is a piece knocked off an edge: a wide, shallow bite with a sharp rim and a rough face. Stones
        chip when a barrel is too empty (common practice).
      </p>
      <p>
        Shallow chips grind out in coarse. <em>Marked with a diamond.</em>
      </p>
      <div className="help-pictures">
        <HelpPicture
          name="chip"
          alt="A wide, shallow bite on the shoulder of a white stone, with a clear rim and a rough face."
        >
          A chip, 7 mm across, on the shoulder.
        </HelpPicture>
        <HelpPicture
          name="chip-red"
          alt="A red stone with two pale, oval bites near its upper edge, and a few dark specks."
        >
          Two chips near the edge. The dark spots are specks.
        </HelpPicture>
      </div>
    </section>
  );
}

function Scratches() {
  return (
    <section aria-labelledby="help-scratches">
      <HelpHeading id="scratches" />
      <p>
        A fresh scratch is a straight, thin line that shines. One coarse grain in a fine step makes many. They
        are looked for in fine, pre-polish and polish.
      </p>
      <p>
        Scratches on several stones mean that coarser grit is in the batch. Wash everything out, and go back
        to the step that the list names. <em>Marked with a line on either side.</em> Pale and busy stones hide
        their scratches: take a loupe to them. <Link href="/help/trust">What is missed</Link>
      </p>
      <div className="help-pictures">
        <HelpPicture
          name="scratches"
          isMarked
          alt="A black stone with a bright reflection of the lamp, and two straight, thin, pale scratches, each between two lines."
        >
          Two scratches of coarse grit, a tenth of a millimeter wide, marked.
        </HelpPicture>
        <HelpPicture
          name="scratches-agate"
          alt="A banded brown agate with short, straight, thin lines among its bands, the brightest beside a pale band."
        >
          Six short scratches. Among the bands an eye hardly sees them; the brightest shines beside the pale
          band.
        </HelpPicture>
      </div>
    </section>
  );
}
