import type { core } from 'zod/mini';
import { texts } from '../texts/speech';
import { shown } from './bundleError';

/** What a value does not meet, as part of a sentence: "stones.3.lengthMm must be at least 0". */
export function unmetBy({ issues }: core.$ZodError): string {
  const [issue] = issues;
  const words = texts().bundle.unmet;
  if (!issue) return words.other(null);
  const where = issue.path.length === 0 ? null : issue.path.map(String).join('.');
  switch (issue.code) {
    case 'invalid_type':
      return words[issue.input === undefined ? 'missing' : 'otherKind'](where, issue.expected);
    case 'too_small':
      return words.bound(
        where,
        issue.inclusive ? 'at least' : 'more than',
        `${issue.minimum}`,
        countedIn(issue.origin),
      );
    case 'too_big':
      return words.bound(
        where,
        issue.inclusive ? 'at most' : 'less than',
        `${issue.maximum}`,
        countedIn(issue.origin),
      );
    case 'invalid_format':
      return words[issue.format === 'date' ? 'noDay' : 'illWritten'](where);
    case 'unrecognized_keys':
      return words.unknownFields(where, issue.keys.slice(0, 3).map(shown).join(', '));
    case 'invalid_value':
      return words.noneOf(where, firstOf(issue.values));
    case 'invalid_union':
      return words.unknownKind(where);
    default:
      return words.other(where);
  }
}

const countedIn = (origin: string) =>
  origin === 'string' ? 'letters' : origin === 'array' ? 'entries' : null;

const firstOf = (values: readonly unknown[]) =>
  `${values.slice(0, 8).map(String).join(', ')}${values.length > 8 ? ' …' : ''}`;
