import type { Texts } from '../texts';

const wide = (deg: string) => `${deg}° breit, von den Steinen aus gesehen`;

function stops(halves: number): string {
  if (halves === 1) return 'eine halbe Blende';
  if (halves === 2) return 'eine Blende';
  return `${halves % 2 === 0 ? halves / 2 : `${(halves - 1) / 2}½`} Blenden`;
}

const byWhat = (byBall: boolean) => (byBall ? 'nach der Kugel' : 'nach Schale, Schatten und Kanten');

const distance = (length: string, pixels: string, pit: string) =>
  `${length} sind ${pixels} Pixel, und Grübchen ab ${pit} sind zu sehen`;
const blur = (pixels: string, onStones: string) =>
  `Kanten sind ${pixels} Pixel weich, auf den Steinen ${onStones}`;

export const rig: Texts['rig'] = {
  lampTooSmall: (deg, times) =>
    `Die Lampe ist nur ${wide(deg)}, zu klein für diese Schärfe: Ihr Bild auf einem Stein geht in der Unschärfe unter. Mach sie ${times}-mal so groß, oder rück sie um so viel näher.`,
  lampGood: (deg) => `Die Lampe ist ${wide(deg)}: eine gute Größe.`,
  lampHopeless: (deg) =>
    `Die Lampe ist ${wide(deg)}; bei dieser Schärfe unterscheidet keine Lampe glänzend von spiegelnd: Rück die Kamera näher.`,
  lampTooLarge: (deg, share) =>
    `Die Lampe ist ${wide(deg)}, zu groß, um bei dieser Schärfe glänzend von spiegelnd zu unterscheiden: ${share === 'half' ? 'Halbiere sie, oder stell sie doppelt so weit weg' : 'Mach sie auf ein Viertel so breit'}.`,
  exposureGood: (share) =>
    `Das Glanzlicht der Kugel erreicht ${share} von dem, was die Kamera fasst: gut belichtet.`,
  exposureOff: (share, halves, isDarker) =>
    `Das Glanzlicht der Kugel ${share === null ? 'ist heller, als die Kamera fasst' : `erreicht ${share} von dem, was die Kamera fasst`}: Nimm es ${stops(halves)} ${isDarker ? 'dunkler' : 'heller'} auf.`,
  distanceGood: (length, pixels, pit) => `${distance(length, pixels, pit)}.`,
  distanceOff: (length, pixels, pit, share) =>
    `${length} sind ${pixels} Pixel, und Grübchen sind erst ab ${pit} zu sehen: Geh näher heran, auf ${share} des Abstands, oder fotografiere weniger Steine mit mehr Pixeln.`,
  focusGood: (pixels, onStones) => `${blur(pixels, onStones)}: scharf.`,
  focusOff: (pixels, onStones) =>
    `${blur(pixels, onStones)}: Stell auf die Steine scharf, halte die Kamera ruhig und wisch das Objektiv ab.`,
  asRemembered: (byBall) => `Lampe und Kamera stehen wie gemerkt (${byWhat(byBall)}).`,
  notAsRemembered: (byBall) => `Lampe und Kamera stehen nicht wie gemerkt (${byWhat(byBall)}).`,
  lampOff: (deg) => `Die Richtung der Lampe ist um ${deg}° verschoben.`,
  lampLooks: (share) => `Sie wirkt ${share} so breit wie zuvor.`,
  shadowsTurned: (deg) => `Die Schatten fallen um ${deg}° anders als zuvor.`,
  scaleChanged: (share) => `Ein Pixel deckt ${share} von dem ab, was er abdeckte.`,
  exposureChanged: (share, byBall) =>
    `Die Belichtung beträgt ${share} der gemerkten: ${byBall ? 'Die Kugel gleicht es aus' : 'berichtigt nach dem Licht auf der Schale'}.`,
};
