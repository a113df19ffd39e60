import { StrictMode, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { CameraScreen } from '../../../src/ui/camera/CameraScreen';
import { openAnalysis } from '../../../src/worker/analysisClient';
import { openPreview } from '../../../src/worker/previewClient';
import '../../../src/styles/all.css';
import '../../../src/styles/camera.css';

/** What the page tells the test, as JSON in its `output`. */
export interface CameraPageAnswer {
  readonly name: string;
  readonly type: string;
  readonly stones: number;
  readonly ballRadiusPx: number | null;
  readonly widthPx: number;
  readonly heightPx: number;
}

const BALL_MM = 16;
const analysis = openAnalysis();

function tell(text: string): void {
  const output = document.querySelector('output');
  if (output) output.textContent = text;
}

/** Measures a shot as the app would. */
async function measure(file: File): Promise<void> {
  const options = { ballMm: BALL_MM, ballAt: null, rig: null };
  const { report } = await analysis.analyze([file], options);
  const answer: CameraPageAnswer = {
    name: file.name,
    type: file.type,
    stones: report.stones.length,
    ballRadiusPx: report.ball?.radiusPx ?? null,
    widthPx: report.widthPx,
    heightPx: report.heightPx,
  };
  tell(JSON.stringify(answer));
}

function Page() {
  const [isOpen, setOpen] = useState(true);
  const close = () => setOpen(false);
  const shot = (file: File) => {
    if (location.hash === '#unmeasured') return tell(file.type);
    close();
    measure(file).catch((error: unknown) => tell(String(error)));
  };
  const fallback = () => {
    close();
    tell('fallback');
  };
  if (!isOpen) return <p>Closed.</p>;
  return (
    <CameraScreen
      ballMm={BALL_MM}
      rig={null}
      openPreview={openPreview}
      onShot={shot}
      onClose={close}
      onFallback={fallback}
    />
  );
}

const place = document.getElementById('page');
if (place === null) throw new Error('The page has no place.');
createRoot(place).render(
  <StrictMode>
    <Page />
  </StrictMode>,
);
