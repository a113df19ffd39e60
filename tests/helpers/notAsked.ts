import { createStore } from 'zustand/vanilla';
import type { WorkState } from '../../src/state/workStore';

const never = () => {
  throw new Error('Not asked for here.');
};

/** Stores that a part of the page under test never asks for: it fails where it does. */
export const NOT_ASKED = {
  keptBitmaps: never,
  pictureOf: never,
  openPreview: never,
  works: createStore<WorkState>(() => ({ works: [], run: never })),
};
