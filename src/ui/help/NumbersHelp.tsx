import { ceilingGu60 } from '../../grading/ceilingGu60';
import type { MaterialName } from '../../grading/materials';
import { plainNumber } from '../../grading/plainNumber';
import { refractiveIndex } from '../../grading/refractiveIndex';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';

const ceilingOf = (material: MaterialName) => plainNumber(ceilingGu60(refractiveIndex(material).n));

/** How each number is made, in plain words. */
export function NumbersHelp() {
  return (
    <section aria-labelledby="help-numbers">
      <HelpHeading id="numbers" />
      <h4>The ball</h4>
      <div className="help-beside">
        <HelpPicture
          name="ball"
          alt="A black glass ball with one small, round, white reflection of the lamp."
        >
          The reference ball. Its white spot is the lamp.
        </HelpPicture>
        <p>
          The dark glass ball is a mirror that is known. Its width gives the scale in millimeters. The place
          of the lamp’s image tells where the lamp stands, its size how large the lamp looks, its edge how
          sharp the camera is, and its brightness what a perfect mirror would send back.
        </p>
      </div>
      <h4>The lamp’s image on a stone</h4>
      <p>
        A stone is a curved mirror too, only rougher. Roughness makes the lamp’s image lower, wider and
        softer. The program draws such images for every roughness, and takes those that fit the photo.
      </p>
      <h4>Gloss units</h4>
      <p>
        From the roughness follows what a gloss meter would read on a flat of the same finish, at 60° (ISO
        2813, ASTM D523). A perfect polish of the standard’s glass reads 100. It is an estimate, and says so.
      </p>
      <h4>The interval</h4>
      <p>
        No photo tells the number exactly. <em>88 (83 to 92)</em> means: most likely 88, and nine times in ten
        between 83 and 92. When two intervals overlap widely, do not call one stone shinier.
      </p>
      <h4>The ceiling</h4>
      <p>
        Each mineral sends back only so much light, however well it is polished. That is its ceiling. Agate
        ends near {ceilingOf('agate')}, fluorite near {ceilingOf('fluorite')}, corundum near{' '}
        {ceilingOf('corundum')}. So tell the program what the stone is made of.
      </p>
      <h4>Smoothness</h4>
      <p>
        It starts at 100. Pits take up to 50, fractures up to 30, chips up to 12, scratches up to 8: more for
        more millimeters of flaw on each square centimeter. What each took is shown.
      </p>
      <h4>Confidence</h4>
      <p>
        Each mark has a confidence. On the trays it was set on, 0.8 was right eight times in ten. From 0.5 on
        a flaw counts. Between 0.125 and 0.5 it is doubtful; if doubtful flaws would decide, you are asked to
        look closer.
      </p>
    </section>
  );
}
