import type { PhotoEntry } from './photoEntry';

/** A photo's result in a few lines for a person: how many stones there are of each verdict, and which. */
export function summaryOf({ file, refused, warnings, stones, contamination }: PhotoEntry): string {
  if (refused) return `${file}: refused (${refused.code}). ${refused.message}`;
  const idsOf = new Map<string, number[]>();
  for (const { id, verdict } of stones) idsOf.set(verdict.action, [...(idsOf.get(verdict.action) ?? []), id]);
  const verdicts = [...idsOf].map(([action, ids]) => `  ${action}: ${ids.length} (stone ${ids.join(', ')})`);
  const notes = warnings.map(({ message }) => `  note: ${message}`);
  return [
    `${file}: ${stones.length} ${stones.length === 1 ? 'stone' : 'stones'}`,
    ...verdicts,
    ...(contamination ? [`  scratches: ${contamination.sentence}`] : []),
    ...notes,
  ].join('\n');
}
