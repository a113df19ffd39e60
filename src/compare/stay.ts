/** How long something lasted, and how it ended so far. */
export interface Stay {
  /** Any unit of time, 0 or more. */
  readonly time: number;
  /** `left`: it came to its end; `waiting`: it lasts still, at least so long; `given up`: it will never come to it. */
  readonly end: 'left' | 'waiting' | 'given up';
}
