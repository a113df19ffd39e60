/** What stones are put together by. */
export const COMPARE_BY = ['material', 'source', 'batch', 'recipe'] as const;

export type CompareBy = (typeof COMPARE_BY)[number];

/** What is compared of them. */
export const COMPARE_WHAT = ['gloss', 'coarse', 'size', 'finished'] as const;

export type CompareWhat = (typeof COMPARE_WHAT)[number];
