import { texts } from '../../texts/speech';
import { useIsExample } from '../stores';

/** Leads into the example year and out of it; each has a journal of its own, so the page is opened anew. */
export function ExampleNote({ isEmpty }: { isEmpty: boolean }) {
  const isExample = useIsExample();
  const words = texts().journal.example;
  if (isExample) {
    return (
      <p className="example-note" role="note">
        {words.note} <a href="./#/journal">{words.back}</a>
      </p>
    );
  }
  if (!isEmpty) return null;
  return (
    <p>
      <a href="?example#/journal">{words.look}</a>
    </p>
  );
}
