import { useSettings } from '../stores';

/** The cautions in short, until they have been read once. */
export function FirstVisit({ onRead }: { onRead: () => void }) {
  const seen = useSettings((state) => state.cautionsSeen);
  const change = useSettings((state) => state.change);
  if (seen) return null;
  return (
    <aside className="first-visit" aria-label="Safety in short">
      <p>
        <strong>Before you start:</strong> no slurry down a drain, keep silica wet, protect eyes and lungs,
        and know your stone: some are hazardous.
      </p>
      <div className="first-visit-ways">
        <button type="button" className="button button-quiet" onClick={onRead}>
          Read why
        </button>
        <button type="button" className="button" onClick={() => change({ cautionsSeen: true })}>
          Understood
        </button>
      </div>
    </aside>
  );
}
