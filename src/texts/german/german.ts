import type { Texts } from '../texts';
import { bundle } from './bundle';
import { camera } from './camera';
import { compare } from './compare';
import { history } from './history';
import { journal } from './journal';
import { keep } from './keep';
import { keepsake } from './keepsake';
import { measures } from './measures';
import { notices } from './notices';
import { offline } from './offline';
import { page } from './page';
import { plan } from './plan';
import { rig } from './rig';
import { rigGuide } from './rigGuide';
import { setup } from './setup';
import { start } from './start';
import { stone } from './stone';
import { tray } from './tray';
import { verdicts } from './verdicts';
import { work } from './work';

/** Alle Texte auf Deutsch. */
export const german: Texts = {
  bundle,
  camera,
  compare,
  history,
  journal,
  keep,
  keepsake,
  measures,
  notices,
  offline,
  page,
  plan,
  rig,
  rigGuide,
  setup,
  start,
  stone,
  tray,
  verdicts,
  work,
};
