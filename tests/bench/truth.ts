import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Step } from '../../src/grading/steps';

/** What a rendered photo truly shows; see sample-images/README.md. */
export interface Truth {
  readonly photo: string;
  readonly step?: Step;
  readonly mmPerPx: number;
  readonly ball: {
    readonly row: number;
    readonly column: number;
    readonly radiusPx: number;
    readonly diameterMm: number;
  };
  readonly lamp: {
    readonly direction: readonly [number, number, number];
    readonly angularDiameterDeg: number;
  };
  readonly stones: readonly TrueStone[];
}

export interface TrueStone {
  readonly id: number;
  readonly material: string;
  readonly alpha: number;
  readonly n: number;
  readonly outline: readonly (readonly [number, number])[];
  readonly flaws: readonly TrueFlaw[];
  readonly decoys: readonly { readonly row: number; readonly column: number; readonly diameterMm: number }[];
}

export interface TrueFlaw {
  readonly kind: 'pit' | 'fracture' | 'chip' | 'scratch';
  readonly row: number;
  readonly column: number;
  readonly diameterMm?: number;
  readonly lengthMm?: number;
  /** Scratches: width of the groove, and the step whose grit cut it. */
  readonly widthMm?: number;
  readonly grit?: Step;
  readonly path?: readonly (readonly [number, number])[];
  readonly visible: boolean;
}

/** Every photo with a truth file in a folder, in the order of names. */
export function truthsIn(folder: string): { path: string; truth: Truth }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as Truth)
    .filter((truth) => Array.isArray(truth.stones))
    .map((truth) => ({ path: join(folder, truth.photo), truth }));
}
