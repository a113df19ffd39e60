import { page } from './page';
import { setup as settings } from './setup';

/** How to set up lamp, ball and camera, step by step. */
export const setup = {
  /** Lengths come with their unit. */
  lamp: (width: string, distance: string) =>
    `**One lamp.** Small and bright. A lamp head ${width} wide, ${distance} away, is right. Put it 25 to 45° to the side of the camera. Switch every other light off.`,
  camera: '**One camera,** straight above the tray. Fix it: a stand, a shelf, a stack of books.',
  tray: '**A plain, matte tray,** gray if you can.',
  ball: `**A polished dark glass ball** among the stones. Measure its diameter and enter it under *${page.setup}*.`,
  stones: '**Dry stones,** a finger apart. Water fills scratches and fakes a polish.',
  dark: '**Take it dark.** The lamp’s white spot in the ball must not be washed out. If it is, add a shot two stops darker.',
  remember: `**Remember it.** Press *${settings.remember}*. Later photos are compared with it, and you are told when something moved.`,
} as const;
