import { Modal } from '../parts/Modal';
import { BallChoice } from './BallChoice';
import { LimitsChoice } from './LimitsChoice';

/** Ball, lamp and camera, and the owner's limits. */
export function Setup({ onClose }: { onClose: () => void }) {
  return (
    <Modal title="Setup" onClose={onClose}>
      <BallChoice />
      <LimitsChoice />
    </Modal>
  );
}
