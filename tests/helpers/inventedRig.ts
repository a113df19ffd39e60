import type { Rig, RigScene } from '../../src/analysis/report';

/** What a photo that was never taken shows of lamp and camera. All numbers are invented. */
export function inventedScene(): RigScene {
  return {
    widthPx: 1800,
    heightPx: 1200,
    focalLength35Mm: 70,
    ballAt: [900, 400],
    tray: [0.2, 0.21, 0.22, 0.19, 0.2, 0.21, 0.18, 0.19, 0.2].map((g) => [1.04 * g, g, 0.95 * g] as const),
    shadow: { turnDeg: -120, reach: 0.5, likeness: 0.8, at: [600, 900] },
    edgeBlurPx: 0.6,
  };
}

/** A rig that was never built: a lamp 11° wide, 30° off the camera's axis. */
export function inventedRig(): Rig {
  return {
    mmPerPx: 0.1,
    light: { direction: [0.3, 0.4, Math.sqrt(0.75)], angularDiameterDeg: 11 },
    lampRadiance: 15,
    sourceSlope: 0.05,
    lampTurnRad: null,
    blurPx: 0.6,
    lampColor: [1, 1, 1],
    scene: inventedScene(),
  };
}
