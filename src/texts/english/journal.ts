const stones = (count: number) => (count === 1 ? '1 stone' : `${count} stones`);
const photos = (count: number) => (count === 1 ? '1 photo' : `${count} photos`);
const checks = (count: number) => (count === 1 ? '1 check' : `${count} checks`);

/** The journal: batches, stones, machines, runs. */
export const journal = {
  compare: 'Compare stones ›',
  empty:
    'Nothing is kept yet. Measure a tray, then press Keep below its stones: from the second check on you see how each stone comes along.',
  /** For a batch, stone or machine whose name is empty, or of letters that cannot be seen. */
  nameless: 'Without a name',
  batchLine: (
    stoneCount: number,
    checkCount: number,
    last: { readonly day: string; readonly step: string } | null,
    isOver: boolean,
  ) =>
    last === null
      ? `no check yet${isOver ? ', over' : ''}`
      : `${stones(stoneCount)}, ${checks(checkCount)}, last ${last.day} after ${last.step}${isOver ? ', over' : ''}`,
  restored: (records: number) =>
    `The browser had lost ${records === 1 ? '1 record' : `${records} records`}: brought back from the safety copy. Save the journal to a file now.`,
  showMore: (count: number) => `Show ${count} more`,
  trayOn: (day: string) => `Tray on ${day}`,
  /** Why something was not kept or not read. */
  troubles: {
    refused:
      'This browser keeps no journal here: storage is forbidden, as in a private window. Checks are measured, but not remembered.',
    unreadable:
      'The journal could not be read just now. Open the page again and keep the check then; nothing is lost.',
    outdated:
      'Another window has opened a newer edition of this journal. Open this page again, then go on; nothing is lost.',
    full: 'It could not be kept: the storage may be full. Free some space and try again; nothing kept before is lost, and Save the journal still works.',
  },
  example: {
    note: 'This is an example: stones and days are invented, the measurements of their pictures are real. It has a journal of its own.',
    back: 'Back to my journal',
    look: 'Look at an example year',
    unreadable: 'The example could not be read. Open the page again.',
  },
  inAndOut: {
    title: 'In and out',
    save: 'Save the journal',
    takeIn: 'Take in a journal',
    table: 'Save a table',
    reminders: 'Save reminders',
    saved: 'Saved: records and photos in one file. Another device takes it in here.',
    remindersSaved: 'Saved: your calendar takes it in. A newer one replaces it there.',
    nothingDue: 'Nothing is due: no batch under way has a check or a run yet.',
    allHere: 'All of it was here already.',
    brought: (fresh: number, records: number) =>
      `${fresh} of ${records} records are new; nothing that was here was changed.`,
  },
  /** What would be lost with this browser's storage. */
  stake: {
    title: 'In no saved file',
    nothing: 'All of it also lies in a saved file.',
    little: (count: number, day: string) => `In no saved file yet: ${photos(count)}, since ${day}.`,
    much: (count: number, day: string) =>
      `${photos(count)} kept since ${day} lie in this browser alone. Save the journal to a file, and put the file on another device too.`,
    most: (count: number, day: string) =>
      `${photos(count)} kept since ${day}, and all that was measured in them, lie in this browser alone: a lost phone or a cleared browser would take them along. Save the journal now, and put the file on another device.`,
  },
  storage: {
    title: 'Storage',
    where: 'The journal is kept in this browser, on this device, and nowhere else.',
    room: (used: string, free: string) => `It takes about ${used}; there is room for ${free} more.`,
    lasting: 'The browser has promised not to clear it by itself.',
    passing: 'The browser may clear it when the device runs out of room.',
    ask: 'Ask the browser to keep it',
    clearing: {
      title: 'When a browser clears a journal',
      text: 'Clearing browsing data clears this journal too. A browser that has promised nothing may clear it when the device runs out of room, and some do when a page has not been opened for a week or longer, unless it is on the home screen. A lost phone takes it along. A saved file brings all of it back: Take in a journal.',
    },
    noPictures: 'This browser draws no pictures off the screen.',
  },
  machines: {
    title: 'Machines',
    machine: 'Machine',
    notSaid: 'not said',
    unknown: 'a machine',
    add: 'Add a machine',
    name: 'Name',
    kind: 'Kind',
    holds: (unit: string) => `Holds, ${unit} (may stay empty)`,
    addThis: 'Add',
  },
  machineKinds: { rotary: 'rotary barrel', vibratory: 'vibratory bowl' },
  /** Beside a machine's name. */
  machineKindsShort: { rotary: 'rotary', vibratory: 'vibratory' },
  runs: {
    title: 'Runs',
    days: (from: string, to: string | null) => `${from} to ${to ?? 'now'}`,
    washedOut: 'Washed out today',
    start: 'Start a run',
    step: 'Step',
    charge: 'Charge (filled in: common practice)',
    endedUndo: 'Washed out today: noted.',
    startedUndo: 'The run is noted.',
    takeOut: 'Take this run out',
    takenOut: 'The run was taken out.',
    started: 'Started',
    add: 'Add the run',
  },
  batch: {
    unknown: 'This batch is not in the journal of this browser. [All batches](/journal)',
    started: (day: string, checkCount: number, isOver: boolean) =>
      `Started ${day}, ${checkCount === 0 ? 'no check yet' : checks(checkCount)}${isOver ? ', over' : ''}.`,
    noCheck:
      'No check yet. Photograph the stones dry on [the tray](/) and keep it under this batch: every later check is then told against it.',
    takeOut: 'Take this check out',
    takenOut: (day: string) => `The check of ${day} was taken out.`,
    outlook: 'What is ready when',
    stones: 'Stones',
    checks: 'Checks',
    print: 'Print this batch',
    about: 'About this batch',
    name: 'Name of the batch',
    inCoarseSince: 'In coarse since',
    isOver: 'It is over: finished, or given up',
    save: 'Save',
    makeLimit: 'Make it my limit',
    nameStones: (count: number) => (count === 1 ? 'Name 1 stone' : `Name ${count} stones`),
    whichIsWhich: 'Which is which',
  },
  /** Until stones are ready, in days of at least a half; 0 is now. */
  readyIn: (days: number) =>
    days === 0
      ? 'now'
      : days < 14
        ? `${Math.round(days)} ${Math.round(days) === 1 ? 'day' : 'days'}`
        : `${Math.round(days / 7)} weeks`,
  /** A check of a batch; sides are the photos that make it up. */
  checkLine: (day: string, step: string, stoneCount: number, sides: number) =>
    `**${day}**, after ${step}, ${stones(stoneCount)}${sides > 1 ? `, ${sides} sides` : ''}`,
  stone: {
    unknown: 'This stone is not in the journal of this browser. [All batches](/journal)',
    where: 'Where this stone is',
    next: 'Next stone ›',
    favorite: 'favorite',
    isFavorite: '★ Favorite',
    makeFavorite: '☆ Make it a favorite',
    checked: (checkCount: number, lastDay: string) =>
      `${checkCount === 1 ? 'One check' : `${checkCount} checks`}, the last on ${lastDay}.`,
    now: 'What to do now',
    grindOn: (outlook: string) =>
      `If you grind on all the same: ${outlook.charAt(0).toLowerCase()}${outlook.slice(1)}`,
    notFirm: 'Not firm: the checks do not all show the same side for certain. Photograph both sides.',
    checks: 'Checks',
    checkLine: (day: string, step: string, sides: number) =>
      `**${day}**, after ${step}${sides > 1 ? `, ${sides} sides together` : ''}`,
    onDay: (name: string, day: string) => `Stone ${name} on ${day}`,
    /** Beside what was advised. */
    youDid: (action: string) => `you: ${action}`,
    decided: 'You did',
    /** Why a verdict is other than advised. */
    decidedSo: (advice: string) => `You decided so; the advice was: ${advice}.`,
    notSaid: 'not said',
    about: 'About this stone',
    name: 'Name or number',
    material: 'Material',
    notSure: 'not sure',
    source: 'Where it came from',
    save: 'Save',
  },
  /** What was measured at a check; numbers and lengths as they are written. */
  measured: (figures: {
    readonly length: string;
    readonly pits: string;
    readonly perArea: string;
    readonly fractures: string;
    readonly gloss: { readonly gu: string; readonly low: string; readonly high: string } | null;
  }) => {
    const { length, pits, perArea, fractures, gloss } = figures;
    const shine = gloss === null ? '' : `, ${gloss.gu} gloss units (${gloss.low} to ${gloss.high})`;
    return `${length} long, ${pits} pits ${perArea}, ${fractures} of fractures${shine}`;
  },
  beforeAfter: {
    title: 'Before and after',
    onDay: (day: string) => `The stone on ${day}`,
    share: (percent: number) => `${percent} % of the later picture`,
  },
  timeline: {
    title: 'From check to check',
    pits: 'Pits',
    fractures: 'Fractures',
    length: 'Length',
    gloss: 'Gloss',
    glossUnits: 'gloss units',
    most: (limit: string) => `at most ${limit}`,
    least: (limit: string) => `smallest ${limit}`,
    brokenLine: (limit: string) => `${limit} (broken line)`,
    said: (what: string, first: string, last: string, unit: string, limit: string | null) =>
      `${what}: ${first} ${unit} at first, ${last} at last${limit === null ? '' : `; ${limit}`}`,
  },
  /** Name of a rig that the journal keeps. */
  rigOf: (day: string | null) => `Remembered on ${day ?? 'an unknown day'}`,
} as const;
