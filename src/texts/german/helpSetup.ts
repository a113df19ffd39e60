import type { HelpTexts } from '../texts';
import { page } from './page';
import { setup as settings } from './setup';

export const setup: HelpTexts['setup'] = {
  lamp: (width, distance) =>
    `**Eine Lampe.** Klein und hell. Ein Lampenkopf, ${width} breit und ${distance} entfernt, ist richtig. Stell sie 25 bis 45° seitlich der Kamera. Mach jedes andere Licht aus.`,
  camera:
    '**Eine Kamera,** genau senkrecht über der Schale. Mach sie fest: ein Stativ, ein Regal, ein Stapel Bücher.',
  tray: '**Eine schlichte, matte Schale,** wenn es geht, eine graue.',
  ball: `**Eine polierte dunkle Glaskugel** zwischen den Steinen. Miss ihren Durchmesser und trag ihn unter *${page.setup}* ein.`,
  stones:
    '**Trockene Steine,** einen Fingerbreit auseinander. Wasser füllt Kratzer und täuscht eine Politur vor.',
  dark: '**Mach das Foto dunkel.** Der weiße Punkt der Lampe in der Kugel darf nicht überstrahlt sein. Ist er es, nimm eine Aufnahme dazu, die zwei Blenden dunkler ist.',
  remember: `**Lass es merken.** Drück auf *${settings.remember}*. Spätere Fotos werden damit verglichen, und du erfährst, wenn sich etwas bewegt hat.`,
};
