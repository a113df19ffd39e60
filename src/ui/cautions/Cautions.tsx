import { Modal } from '../parts/Modal';
import { useSpeech } from '../useSpeech';

const CAUTIONS = ['slurry', 'dust', 'eyes', 'hazardous-stones'] as const;

/** All cautions, one tap away from everywhere. */
export function Cautions({ onClose }: { onClose: () => void }) {
  const { safety, cautionTitles, cautions } = useSpeech().texts.verdicts;
  return (
    <Modal title={safety} onClose={onClose}>
      <ul className="cautions">
        {CAUTIONS.map((about) => (
          <li key={about}>
            <strong>{cautionTitles[about]}.</strong> {cautions[about]}
          </li>
        ))}
      </ul>
    </Modal>
  );
}
