type Values = readonly (string | number | boolean | null | readonly string[])[];

/** What one function of the texts says with the same values in both languages. */
export interface SpokenPair {
  readonly path: string;
  readonly english: string;
  readonly german: string;
  /** Every number among the values, as it must be found in both. */
  readonly numbers: readonly string[];
}

/**
 * Calls every function of an area's texts in both languages.
 *
 * @param samples - Values for each function by its path, such as "subject.source".
 * @throws Where a function has no samples, or samples have no function.
 */
export function spokenPairs(
  english: object,
  german: object,
  samples: Readonly<Record<string, Values>>,
): SpokenPair[] {
  const inEnglish = functionsOf(english);
  const inGerman = new Map(functionsOf(german));
  const lacking = inEnglish.filter(([path]) => samples[path] === undefined).map(([path]) => path);
  const unknown = Object.keys(samples).filter((path) => !inGerman.has(path));
  if (lacking.length + unknown.length > 0)
    throw new Error(`No samples: ${lacking}. No function: ${unknown}.`);
  return inEnglish.map(([path, say]) => {
    const values = samples[path]!;
    return {
      ...{ path, english: say(...values), german: inGerman.get(path)!(...values) },
      numbers: values.flatMap((value) => String(value).match(/\d+/g) ?? []),
    };
  });
}

type Say = (...values: Values) => string;

function functionsOf(tree: object, path = ''): [string, Say][] {
  return Object.entries(tree).flatMap(([name, part]): [string, Say][] => {
    if (typeof part === 'function') return [[`${path}${name}`, part as Say]];
    return typeof part === 'object' && part !== null ? functionsOf(part, `${path}${name}.`) : [];
  });
}
