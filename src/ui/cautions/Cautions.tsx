import { CAUTIONS } from '../../grading/cautions';
import { Modal } from '../parts/Modal';

/** All cautions, one tap away from everywhere. */
export function Cautions({ onClose }: { onClose: () => void }) {
  return (
    <Modal title="Safety" onClose={onClose}>
      <ul className="cautions">
        {CAUTIONS.map(({ about, text }) => (
          <li key={about}>
            <strong>{about}.</strong> {text}
          </li>
        ))}
      </ul>
    </Modal>
  );
}
