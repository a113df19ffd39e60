import type { Action } from '../../grading/opinion';
import type { GradedPhoto } from '../../state/gradePhoto';
import type { TrayPhoto } from '../../state/trayPhoto';
import { KeepCheck } from '../keep/KeepCheck';
import { StoneList } from '../list/StoneList';
import { StoneDetail } from '../stone/StoneDetail';
import { useGraded, usePhotos } from '../stores';

interface Props {
  readonly photo: TrayPhoto;
  readonly graded: GradedPhoto;
  readonly bitmap: ImageBitmap | null;
  /** The verdict whose stones alone are shown. */
  readonly only: Action | null;
  readonly onOnly: (action: Action | null) => void;
  readonly onBench: () => void;
}

/** What stands beside a measured photo: the stone picked out, all stones, and the way into the journal. */
export function TrayResults({ photo, graded, bitmap, only, onOnly, onBench }: Props) {
  const plain = useGraded();
  const selected = usePhotos((state) => state.selectedStone);
  const stone = graded.report.stones.find(({ id }) => id === selected);
  const grade = graded.grades.find(({ id }) => id === selected);
  return (
    <>
      {stone && grade && (
        <StoneDetail key={stone.id} stone={stone} grade={grade} report={graded.report} bitmap={bitmap} />
      )}
      <StoneList
        graded={graded}
        bitmap={bitmap}
        name={photo.name}
        only={only}
        onOnly={onOnly}
        onBench={onBench}
      />
      {plain !== null && plain.report.stones.length > 0 && !photo.sample && (
        <KeepCheck key={photo.id} photo={photo} graded={plain} bitmap={bitmap} />
      )}
    </>
  );
}
