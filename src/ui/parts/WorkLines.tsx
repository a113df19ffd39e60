import { useWorks } from '../stores';
import { WorkLine } from './WorkLine';

/** Everything that is under way, on whichever screen it was begun. */
export function WorkLines() {
  const works = useWorks();
  return (
    <div role="status" className="work-place">
      {works.map(({ id, said, share, isStopping, cancel }) => (
        <WorkLine
          key={id}
          words={said()}
          share={share}
          isStopping={isStopping}
          isAnnounced
          onCancel={cancel}
        />
      ))}
    </div>
  );
}
