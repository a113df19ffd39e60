/** One target of the real-photograph bench and what came of it. */
export interface Verdict {
  readonly what: string;
  readonly measured: string;
  readonly target: string;
  readonly met: boolean;
}
