/**
 * Times a whole analysis against the decoding of its JPEG (by sharp), in Node, with the code of the page: `npm run bench`.
 * Everything is a ratio within one run, since other work on the machine slows both; CPU time beside it leaves waiting
 * out. The 12-megapixel tray, or a photo of one's own, also goes through a script that does the same work with general
 * libraries (peer.py; Python with OpenCV and scikit-image). `-- --megapixels 2,12` chooses sizes, `-- --runs 3` repeats
 * (the median counts), `-- --photo FILE` takes a photo of one's own. Ends with 1 when a target is missed.
 */
import { rm } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import type { Watch } from '../../src/analysis/options';
import { decodeFile } from '../../src/cli/decodeFile';
import { type Engines, openEngines } from '../../src/vision/openEngines';
import { quantile } from './quantile';
import { findPeerPython, runPeer } from './runPeer';
import { manyStones, photoFolder, type SpeedPhoto, trayOf } from './speedPhotos';

const BALL_MM = 16;
/** Most that a whole analysis may take, in decodings of its photo. */
const TARGETS: Readonly<Record<string, number>> = { '12 MP': 3, '12 MP, 40 stones': 6 };
/** The photo that the peer script gets too, and how many times as fast as it an analysis is to be. */
const PEER = { name: '12 MP', target: 4 };

const { values } = parseArgs({
  options: {
    megapixels: { type: 'string', default: '2,12,24,48' },
    runs: { type: 'string', default: '1' },
    photo: { type: 'string' },
  },
});

interface Times {
  readonly stones: number;
  readonly decode: number;
  readonly outlines: number;
  readonly total: number;
  readonly network: number;
  readonly cpu: number;
  readonly decodeCpu: number;
}

/** Wall and CPU time of a piece of work, ms. */
async function timed<T>(work: () => Promise<T>): Promise<{ result: T; ms: number; cpu: number }> {
  const start = performance.now();
  const before = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(before);
  return { result, ms: performance.now() - start, cpu: (user + system) / 1000 };
}

async function timesOf(path: string, engines: Engines): Promise<Times> {
  const decoded = await timed(() => decodeFile(path));
  let network = 0;
  const flawNet: Engines['flawNet'] = {
    shares: async (...planes) => {
      const { result, ms } = await timed(() => engines.flawNet.shares(...planes));
      network += ms;
      return result;
    },
  };
  let outlines = 0;
  const begun = performance.now();
  const watch: Watch = (_stage, _share, found) => {
    if (found) outlines = performance.now() - begun;
  };
  const photo = decoded.result;
  const options = { ballMm: BALL_MM, ballAt: null, rig: null };
  const analyzed = await timed(() => analyzePhoto(photo, options, { ...engines, flawNet }, watch));
  return {
    stones: analyzed.result.stones.length,
    decode: decoded.ms,
    decodeCpu: decoded.cpu,
    outlines,
    total: analyzed.ms,
    cpu: analyzed.cpu,
    network,
  };
}

function show(name: string, all: readonly Times[]): number {
  const of = (what: keyof Times) =>
    quantile(
      all.map((times) => times[what]),
      0.5,
    );
  const ratio = of('total') / of('decode');
  const cells = [
    name.padEnd(18),
    `${of('stones')}`.padStart(6),
    `${of('decode').toFixed(0)}`.padStart(8),
    `${(of('outlines') / of('decode')).toFixed(1)}`.padStart(9),
    `${(of('network') / of('decode')).toFixed(1)}`.padStart(9),
    `${ratio.toFixed(1)}`.padStart(7),
    `${(of('cpu') / of('decodeCpu')).toFixed(1)}`.padStart(7),
    `${(of('cpu') / of('stones')).toFixed(0)}`.padStart(9),
  ];
  console.log(cells.join(''));
  return ratio;
}

/** Prints how an analysis compares with the peer script's work on the same photo; true when met or there is no peer. */
async function comparePeer(path: string, all: readonly Times[]): Promise<boolean> {
  if (python === null) {
    console.log(
      '  no peer: no Python with OpenCV, scikit-image, numpy and scipy was found (PYTHON may name one)',
    );
    return true;
  }
  const peers = [];
  for (let run = 0; run < all.length; run++) peers.push(await runPeer(python, path));
  const middle = (of: readonly number[]) => quantile(of, 0.5);
  const ours = middle(all.map(({ total }) => total));
  const work = middle(peers.map((peer) => peer.work));
  const decode = middle(peers.map((peer) => peer.decode));
  const cpu = middle(all.map((times) => times.cpu)) / middle(peers.map((peer) => peer.cpu));
  const isMet = work / ours >= PEER.target;
  console.log(
    `  peer: ${peers[0]!.stones} stones with the ball, decoded in ${decode.toFixed(0)} ms, work ${work.toFixed(0)} ms; ` +
      `ours ${ours.toFixed(0)} ms: ours over peer ${(ours / work).toFixed(2)}, CPU time ${cpu.toFixed(2)}`,
  );
  console.log(`  target ${(1 / PEER.target).toFixed(2)}: ${isMet ? 'met' : 'NOT MET'}`);
  return isMet;
}

const python = await findPeerPython();
const folder = await photoFolder();
try {
  const engines = await openEngines();
  const sizes = values.megapixels.split(',').map(Number);
  const photos: SpeedPhoto[] = [];
  if (values.photo) photos.push({ path: values.photo, name: values.photo });
  else {
    for (const megapixels of sizes) photos.push(await trayOf(megapixels, folder));
    if (sizes.includes(12)) photos.push(await manyStones(folder));
  }
  // The first run compiles; it does not count.
  await timesOf('sample-images/close-up.jpg', engines);
  console.log('as multiples of the decoding, median of the runs; decoding, CPU of a stone in ms');
  console.log('photo             stones  decode outlines  network  whole    CPU CPU/stone');
  let isMet = true;
  for (const { name, path } of photos) {
    const all: Times[] = [];
    for (let run = 0; run < Number(values.runs); run++) all.push(await timesOf(path, engines));
    const ratio = show(name, all);
    const target = TARGETS[name];
    if (target !== undefined) {
      console.log(`  target ${target}: ${ratio <= target ? 'met' : 'NOT MET'}`);
      isMet &&= ratio <= target;
    }
    if (name === PEER.name || values.photo) isMet = (await comparePeer(path, all)) && isMet;
  }
  process.exitCode = isMet ? 0 : 1;
} finally {
  await rm(folder, { recursive: true });
}
