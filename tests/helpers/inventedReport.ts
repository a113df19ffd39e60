import type {
  FlawReport,
  HighlightReport,
  PhotoReport,
  PixelPoint,
  StoneReport,
} from '../../src/analysis/report';

/** A lumpy oval around a center: the outline of a stone that never existed. */
function inventedOutline(center: PixelPoint, lengthPx: number, widthPx: number, turn: number): PixelPoint[] {
  return Array.from({ length: 48 }, (_, index): PixelPoint => {
    const angle = (2 * Math.PI * index) / 48;
    const lump = 1 + 0.07 * Math.sin(2 * angle + turn) + 0.05 * Math.sin(3 * angle + 2 * turn);
    const [along, across] = [(lengthPx / 2) * lump * Math.cos(angle), (widthPx / 2) * lump * Math.sin(angle)];
    return [
      center[0] + along * Math.sin(turn) + across * Math.cos(turn),
      center[1] + along * Math.cos(turn) - across * Math.sin(turn),
    ];
  });
}

function inventedHighlight(center: PixelPoint, alpha: number): HighlightReport {
  const distance = Array.from({ length: 24 }, (_, index) => index * 0.25);
  const model = distance.map((d) => Math.exp(-((d * 0.12) ** 2) / alpha) / (1 + 12 * alpha));
  return {
    row: center[0] - 20,
    column: center[1] - 14,
    byIndex: [1.45, 1.54, 1.65].map((n) => ({
      n,
      alpha: alpha * (n / 1.54),
      alphaLow: alpha * 0.85,
      alphaHigh: alpha * 1.2,
    })),
    profile: {
      distance,
      model,
      measured: model.map((share, i) => Math.max(0, share + 0.03 * Math.sin(i * 1.7))),
    },
  };
}

/** Colors, patterns and silhouettes that differ from stone to stone far more than two photos of one do. */
function inventedLook(id: number, lengthMm: number, widthMm: number): StoneReport['look'] {
  const wave = (count: number, scale: number, turn: number) =>
    Array.from({ length: count }, (_, k) => scale * Math.sin(id * 2.4 + turn * k));
  return {
    colors: wave(15, 20, 0.1).map((value, k) => (k < 5 ? 50 + value : value / 2)),
    pattern: wave(12, 0.8, 0.3),
    silhouette: wave(72, 0.05, 0.26).map((value) => 1 + value),
    size: [lengthMm, widthMm, (Math.PI / 4) * lengthMm * widthMm],
  };
}

/** Invented stones are told apart by their number: rougher from one to the next, every third with flaws. */
function inventedStone(id: number, center: PixelPoint): StoneReport {
  const [lengthPx, widthPx] = [200 + 18 * (id % 4), 150 + 12 * (id % 3)];
  const flaws: FlawReport[] = [
    { kind: 'pit', row: center[0] + 25, column: center[1] - 30, diameterMm: 0.9, confidence: 0.9 },
    { kind: 'pit', row: center[0] + 32, column: center[1] + 18, diameterMm: 0.6, confidence: 0.7 },
    { kind: 'fracture', row: center[0] - 30, column: center[1] + 30, lengthMm: 6.2, confidence: 0.8 },
  ];
  return {
    id,
    center,
    outline: inventedOutline(center, lengthPx, widthPx, id * 0.9),
    areaMm2: (Math.PI / 4) * (lengthPx / 10) * (widthPx / 10),
    lengthMm: lengthPx / 10,
    widthMm: widthPx / 10,
    cutOff: false,
    highlight: id % 7 === 0 ? null : inventedHighlight(center, 0.01 * 1.55 ** ((id * 5) % 11)),
    glossBound: id % 7 === 0 ? { byIndex: [{ n: 1.54, alphaAtLeast: 0.15 }] } : null,
    flaws: id % 3 === 0 ? flaws : id % 3 === 1 ? [] : flaws.slice(0, 1),
    inspectedCm2: 2.4,
    look: inventedLook(id, lengthPx / 10, widthPx / 10),
  };
}

/**
 * A report of a photo that was never taken, for tests of what is done with reports. All numbers are invented.
 *
 * @param stoneCount - How many stones lie in rows of six, 0 to 40.
 */
export function inventedReport(stoneCount = 12): PhotoReport {
  const light = { direction: [-0.3, 0.4, 0.866], angularDiameterDeg: 9 } as const;
  const stones = Array.from({ length: stoneCount }, (_, index) =>
    inventedStone(index + 1, [170 + 230 * Math.floor(index / 6), 180 + 285 * (index % 6)]),
  );
  return {
    widthPx: 1800,
    heightPx: Math.max(1200, 330 + 230 * Math.ceil(stoneCount / 6)),
    mmPerPx: 0.1,
    ball: { row: 1000, column: 900, radiusPx: 80 },
    light,
    rig: { mmPerPx: 0.1, light, lampRadiance: 40, sourceSlope: 0.04, lampTurnRad: null, blurPx: 0.9 },
    warnings: [],
    stones,
  };
}
