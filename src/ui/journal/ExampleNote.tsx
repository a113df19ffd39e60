import { useIsExample } from '../stores';

/** Leads into the example year and out of it; each has a journal of its own, so the page is opened anew. */
export function ExampleNote({ isEmpty }: { isEmpty: boolean }) {
  const isExample = useIsExample();
  if (isExample) {
    return (
      <p className="example-note" role="note">
        This is an example: stones and days are invented, the measurements of their pictures are real. It has
        a journal of its own. <a href="./#/journal">Back to my journal</a>
      </p>
    );
  }
  if (!isEmpty) return null;
  return (
    <p>
      <a href="?example#/journal">Look at an example year</a>
    </p>
  );
}
