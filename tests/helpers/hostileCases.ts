import { BOMBS } from './hostileBombs';
import type { HostileCase } from './hostileCase';
import { CONTAINERS } from './hostileContainers';
import { JOURNALS } from './hostileJournals';
import { NAMES } from './hostileNames';
import { PICTURES } from './hostilePictures';
import { REFERENCES } from './hostileReferences';
import { TYPES } from './hostileTypes';
import { VALUES } from './hostileValues';
import { TEXTS } from './hostileWords';

/** Every bundle that is made to do harm. */
export const HOSTILE_CASES: readonly HostileCase[] = [
  ...[NAMES, BOMBS, CONTAINERS, JOURNALS, VALUES, PICTURES, TEXTS, TYPES, REFERENCES].flat(),
];
