/** Starting a batch. */
export const start = {
  title: 'Start a batch',
  lead: 'What goes into the machine today. Only the name is needed; the rest makes later comparisons worth more.',
  name: 'Name of the batch',
  nameHint: 'Such as “river agates, spring”.',
  stones: 'What are the stones?',
  addMaterial: 'Add a material',
  choose: 'choose …',
  drop: (material: string) => `Without ${material}`,
  source: 'Where do they come from?',
  sourceHint: 'A place, a seller’s lot, a purchase: whatever you will want to compare one day.',
  machine: 'Which machine?',
  newMachine: 'Another machine',
  step: 'First step',
  recipe: 'What goes in',
  begin: 'Start this batch today',
  next: 'Look at the stones first, too: photograph them dry on the tray, so that there is a before to every after.',
} as const;
