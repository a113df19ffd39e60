import { FINISH_FROM_GU60, FINISHES, type Finish } from '../../grading/finish';
import { HelpHeading } from './HelpHeading';
import { HelpPicture } from './HelpPicture';

const LOOKS: Readonly<Record<Finish, { readonly alt: string; readonly caption: string }>> = {
  matte: {
    alt: 'A red stone without any reflection, only a soft brightness where the light falls.',
    caption: 'No image of the lamp. The light fades softly. Coarse grit leaves it.',
  },
  satin: {
    alt: 'A red stone with two wide, soft, pale glows.',
    caption: 'A wide, soft glow where the lamp should be.',
  },
  'semi-gloss': {
    alt: 'A red stone with a small bright reflection that fades into a haze around it.',
    caption: 'The lamp is there, with a haze around it.',
  },
  gloss: {
    alt: 'A red stone with a small, bright, nearly sharp reflection of the lamp.',
    caption: 'The lamp is clear, its edge a little soft.',
  },
  mirror: {
    alt: 'A green stone with a small, white, sharply cut reflection of the lamp.',
    caption: 'The lamp stands in the stone with a sharp edge.',
  },
};

/** Gloss units of a finish, in words. */
function rangeOf(finish: Finish): string {
  const [from, to] = [FINISH_FROM_GU60[finish], FINISHES[FINISHES.indexOf(finish) + 1]];
  if (to === undefined) return `${from} gloss units and more`;
  return from === 0
    ? `below ${FINISH_FROM_GU60[to]} gloss units`
    : `${from} to ${FINISH_FROM_GU60[to]} gloss units`;
}

/** The five finishes, each as a picture. */
export function FinishesHelp() {
  return (
    <section aria-labelledby="help-finishes">
      <HelpHeading id="finishes" />
      <p>
        Look at the lamp’s image on the stone. The smoother the skin, the smaller, brighter and sharper it is.
      </p>
      <div className="help-pictures">
        {FINISHES.map((finish) => (
          <HelpPicture key={finish} name={finish} alt={LOOKS[finish].alt}>
            <strong>{finish[0]!.toUpperCase() + finish.slice(1)}</strong>, {rangeOf(finish)}.{' '}
            {LOOKS[finish].caption}
          </HelpPicture>
        ))}
      </div>
      <p>
        The names follow published gloss levels for paint (from memory). Hard, dense agate can end at a
        mirror. Some jaspers stop at satin whatever you do: that is the stone, not you.
      </p>
    </section>
  );
}
