import { texts } from '../../texts/speech';
import { GradingChoices } from '../setup/GradingChoices';
import { TrayPicture } from './TrayPicture';

const nothing = () => undefined;

/** The sample as a small picture while the photo itself is on its way, laid out as it will be. */
export function ComingSample({ picture }: { picture: string }) {
  const words = texts().tray;
  return (
    <div className="tray">
      <div className="tray-photo">
        <TrayPicture
          file={null}
          small={null}
          standIn={picture}
          found={null}
          graded={null}
          only={null}
          lit={null}
          pointing={false}
          onPointed={nothing}
        >
          <div className="title">
            <p className="title-name">
              <strong>{words.sampleTray}</strong> {words.sampleNote}
            </p>
          </div>
        </TrayPicture>
      </div>
      <div className="tray-side">
        <GradingChoices />
      </div>
    </div>
  );
}
