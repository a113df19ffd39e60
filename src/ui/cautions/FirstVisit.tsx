import { Rich } from '../parts/Rich';
import { useSettings } from '../stores';
import { useSpeech } from '../useSpeech';

/** The cautions in short, until they have been read once. */
export function FirstVisit({ onRead }: { onRead: () => void }) {
  const seen = useSettings((state) => state.cautionsSeen);
  const change = useSettings((state) => state.change);
  const words = useSpeech().texts.verdicts;
  if (seen) return null;
  return (
    <aside className="first-visit" aria-label={words.safetyInShort}>
      <p>
        <Rich text={words.beforeYouStart} />
      </p>
      <div className="first-visit-ways">
        <button type="button" className="button button-quiet" onClick={onRead}>
          {words.readWhy}
        </button>
        <button type="button" className="button" onClick={() => change({ cautionsSeen: true })}>
          {words.understood}
        </button>
      </div>
    </aside>
  );
}
