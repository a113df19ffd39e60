import type { Stay } from '../../src/compare/stay';

/** Weeks; a plus in the papers, a "waiting" here, for those whose end was not seen. */
const seen = (times: readonly number[]): Stay[] => times.map((time) => ({ time, end: 'left' }));
const waiting = (times: readonly number[]): Stay[] => times.map((time) => ({ time, end: 'waiting' }));

/** Freireich et al. 1963 (Blood 21, 699–716), weeks in remission, treated; as printed in Gehan 1965. */
export const TREATED = [
  ...seen([6, 6, 6, 7, 10, 13, 16, 22, 23]),
  ...waiting([6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35]),
];

/** The same, untreated. */
export const UNTREATED = seen([1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23]);
