import { expect, it } from 'vitest';
import { readCommandLine } from '../../src/cli/readCommandLine';

it('takes a ball of 16 mm and the coarse step when nothing is said', () => {
  expect(readCommandLine(['tray.jpg'])).toEqual({
    photos: ['tray.jpg'],
    exposures: false,
    lampMovedFile: null,
    ballMm: 16,
    ballAt: null,
    rigFile: null,
    saveRigFile: null,
    step: 'coarse',
    material: null,
    jsonFile: null,
    pictureFolder: null,
    bundleFile: null,
    batchName: null,
    jobs: null,
  });
});

it('reads every option, before or after the photos', () => {
  const words = '--step polish a.jpg --material Tigers-Eye --ball-mm 12.5 --json - --picture out b.jpg';
  expect(readCommandLine(words.split(' '))).toMatchObject({
    photos: ['a.jpg', 'b.jpg'],
    ballMm: 12.5,
    step: 'polish',
    material: "tiger's eye",
    jsonFile: '-',
    pictureFolder: 'out',
  });
  expect(readCommandLine('a.jpg --no-ball --rig r --save-rig s'.split(' '))).toMatchObject({
    ballMm: null,
    rigFile: 'r',
    saveRigFile: 's',
  });
  expect(readCommandLine(['a.jpg', '--ball-at', '840,1210.5'])).toMatchObject({ ballAt: [840, 1210.5] });
});

it('takes all photos for shots of one scene, wherever the word stands', () => {
  for (const words of ['--exposures a.jpg b.jpg', 'a.jpg --exposures b.jpg', 'a.jpg b.jpg --exposures']) {
    expect(readCommandLine(words.split(' '))).toMatchObject({ photos: ['a.jpg', 'b.jpg'], exposures: true });
  }
  const pointed = 'a.jpg b.jpg --exposures --ball-at 1,2'.split(' ');
  expect(readCommandLine(pointed)).toMatchObject({ ballAt: [1, 2] });
});

it('takes a second photo with the lamp moved beside one photo', () => {
  expect(readCommandLine('a.jpg --lamp-moved b.jpg'.split(' '))).toMatchObject({
    photos: ['a.jpg'],
    lampMovedFile: 'b.jpg',
  });
});

it('takes a folder of photos, a bundle to write and the name of its batch', () => {
  expect(readCommandLine(['photos', '--bundle', 'a.zip', '--batch-name', 'river finds'])).toMatchObject({
    photos: ['photos'],
    bundleFile: 'a.zip',
    batchName: 'river finds',
  });
});

it('says nothing but that help is wanted', () => {
  expect(readCommandLine(['--help'])).toBeNull();
});

it.each([
  { words: '', says: 'Name at least one photo; --help lists the options.' },
  { words: 'a.jpg --fast', says: "Unknown option '--fast'; --help lists the options." },
  { words: 'a.jpg --json', says: "Option '--json <value>' argument missing; --help lists the options." },
  {
    words: 'a.jpg --ball-mm small',
    says: '--ball-mm needs a diameter in millimeters, such as 16, not "small".',
  },
  { words: 'a.jpg --ball-mm 0', says: '--ball-mm needs a diameter in millimeters, such as 16, not "0".' },
  {
    words: 'a.jpg --ball-at here',
    says: '--ball-at needs a row and a column in pixels, such as 840,1210, not "here".',
  },
  {
    words: 'a.jpg --no-ball --ball-mm 16',
    says: 'Give either --no-ball or --ball-mm and --ball-at, not both.',
  },
  {
    words: 'a.jpg b.jpg --ball-at 1,2',
    says: '--ball-at points at the ball of one photo: name only that one.',
  },
  {
    words: 'a.jpg b.jpg --lamp-moved c.jpg',
    says: '--lamp-moved goes with one photo: name only that one.',
  },
  {
    words: 'a.jpg --no-ball --lamp-moved c.jpg',
    says: '--lamp-moved needs the ball in both photos: leave out --no-ball.',
  },
  {
    words: 'a.jpg --exposures',
    says: '--exposures merges shots of one scene: name at least two.',
  },
  {
    words: 'a.jpg --batch-name finds',
    says: '--batch-name names the batch of a bundle: give --bundle FILE too.',
  },
  {
    words: `a.jpg --bundle a.zip --batch-name ${'n'.repeat(201)}`,
    says: '--batch-name needs a name of 1 to 200 letters.',
  },
  {
    words: 'a.jpg --step last',
    says: 'There is no step "last": choose coarse, medium, fine, prepolish, polish.',
  },
])('answers "$words" with one sentence', ({ words, says }) => {
  expect(() => readCommandLine(words ? words.split(' ') : [])).toThrow(says);
});

it('lists the materials for one it does not know', () => {
  expect(() => readCommandLine(['a.jpg', '--material', 'cheese'])).toThrow(
    /^There is no material "cheese": choose agate, /,
  );
});

it('shares photos out among processes, unless something is asked that looks at all of them or at one scene', () => {
  expect(readCommandLine('photos --jobs 2 --json r.json'.split(' '))).toMatchObject({
    photos: ['photos'],
    jobs: 2,
  });
  const refused = {
    '0': '--jobs needs a number from 1 to 64, not "0".',
    many: '--jobs needs a number from 1 to 64, not "many".',
    '2.5': '--jobs needs a number from 1 to 64, not "2.5".',
    '2 --bundle b.zip': '--bundle does not go with --jobs: leave one of them out.',
    '2 --save-rig r.json': '--save-rig does not go with --jobs: leave one of them out.',
    '2 --json -': '--jobs notes what is done beside the JSON: give --json a file.',
  };
  for (const [words, says] of Object.entries(refused))
    expect(() => readCommandLine(`a.jpg --jobs ${words}`.split(' '))).toThrow(says);
});
