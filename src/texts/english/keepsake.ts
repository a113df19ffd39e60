/** Pictures to keep: the card of a stone before and after, and the poster of a batch. */
export const keepsake = {
  savePoster: 'Save a poster of this batch',
  saveCard: 'Save before and after as a picture',
  drawing: 'Drawing the picture…',
  saved: 'Saved.',
  failed: 'The picture could not be saved on this device: take a screenshot instead.',

  days: (from: string, to: string) => `${from} to ${to}`,
  checks: (count: number) => (count === 1 ? '1 check' : `${count} checks`),
  stones: (count: number, favorites: number) => {
    const total = count === 1 ? '1 stone' : `${count} stones`;
    return favorites === 0
      ? total
      : `${total}, ${favorites} of them ${favorites === 1 ? 'a favorite' : 'favorites'}`;
  },
  /** How many stones got a verdict; `action` as within a sentence. */
  counted: (count: number, action: string) => `${count} ${action}`,

  moment: (step: string, length: string) => `after ${step}, ${length} long`,
  weeksInCoarse: (count: number) => (count === 1 ? '1 week in coarse' : `${count} weeks in coarse`),
  gloss: 'Gloss, estimated',
  ceiling: (gu: string) => `ceiling ${gu}`,
  thenReading: (gu: string, low: string, high: string) => `then ${gu} (${low} to ${high})`,
  nowReading: (gu: string, low: string, high: string) => `now ${gu} (${low} to ${high})`,
  thenNoNumber: 'then: no number',
  nowNoNumber: 'now: no number',
} as const;
