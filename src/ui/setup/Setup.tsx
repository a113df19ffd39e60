import { useState } from 'react';
import { Link } from 'wouter';
import { texts } from '../../texts/speech';
import { Modal } from '../parts/Modal';
import { useSettings, useStoreActions } from '../stores';
import { BallChoice } from './BallChoice';
import { LimitsChoice } from './LimitsChoice';
import { RigPart } from './RigPart';
import { UnitsChoice } from './UnitsChoice';

/** Ball, lamp and camera, and the owner's limits; another ball makes the photo measured anew on closing. */
export function Setup({ onClose }: { onClose: () => void }) {
  const { measureAgain } = useStoreActions();
  const ballMm = useSettings((state) => state.ballMm);
  const noBall = useSettings((state) => state.noBall);
  const [before] = useState({ ballMm, noBall });
  const close = () => {
    if (ballMm !== before.ballMm || noBall !== before.noBall) measureAgain();
    onClose();
  };
  return (
    <Modal title={texts().page.setup} onClose={close}>
      <Link href="/rig" className="button" onClick={close}>
        {texts().rigGuide.setupLink}
      </Link>
      <BallChoice />
      <RigPart />
      <LimitsChoice />
      <UnitsChoice />
    </Modal>
  );
}
