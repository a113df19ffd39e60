import type { ReactNode } from 'react';
import type { Framing } from '../../camera/framing';
import { liveRig } from '../../camera/liveRig';
import { rigAdvice } from '../../grading/rigAdvice';
import { lengthWords } from '../../texts/measures';
import { plainNumber } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';

interface Fact {
  readonly about: string;
  /** Null while it is not known. */
  readonly inOrder: boolean | null;
  readonly sentence: string;
}

/**
 * Ball, lamp, exposure, distance and focus as the live picture shows them, each with what to do about it.
 *
 * @param framing - What the frames so far have shown.
 * @param shotPx - Longer side of the photo that would be taken, pixels.
 * @param ballMm - Diameter of the ball, mm.
 * @returns All facts as a list, and the first that is not in order; null when all are.
 */
export function liveRigGuide(
  framing: Framing,
  shotPx: number,
  ballMm: number,
): { readonly facts: ReactNode; readonly toDo: string | null } {
  const facts = liveFacts(framing, shotPx, ballMm);
  const list = (
    <ul className="rig-facts rig-live" aria-label={texts().rigGuide.facts}>
      {facts.map(({ about, inOrder, sentence }) => (
        <li key={about} data-wanting={inOrder === false} data-unknown={inOrder === null}>
          {sentence}
        </li>
      ))}
    </ul>
  );
  return { facts: list, toDo: facts.find(({ inOrder }) => inOrder === false)?.sentence ?? null };
}

function liveFacts({ preview, checks }: Framing, shotPx: number, ballMm: number): Fact[] {
  const words = texts().rigGuide;
  const isSharp = checks?.focus !== 'bad';
  const rig = preview && liveRig(preview, shotPx, isSharp);
  if (rig === null) {
    const unknown = (about: string): Fact => ({ about, inOrder: null, sentence: words.notYet });
    return [{ about: 'ball', inOrder: false, sentence: words.ballMissing }, unknown('lamp')];
  }
  const ball = words.ballFound(lengthWords(ballMm), plainNumber(ballMm / rig.mmPerPx));
  return [
    { about: 'ball', inOrder: true, sentence: ball },
    ...rigAdvice(rig).filter(({ about }) => about !== 'focus'),
    { about: 'focus', inOrder: isSharp, sentence: isSharp ? words.focusGood : words.focusBad },
  ];
}
