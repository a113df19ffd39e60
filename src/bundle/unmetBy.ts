import type { core } from 'zod/mini';
import { shown } from './bundleError';

/** What a value does not meet, as part of a sentence: "stones.3.lengthMm must be at least 0". */
export function unmetBy({ issues }: core.$ZodError): string {
  const [issue] = issues;
  if (!issue) return 'it is not what it must be';
  const where = issue.path.length === 0 ? 'it' : issue.path.map(String).join('.');
  return `${where} ${wordsOf(issue)}`;
}

function wordsOf(issue: core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined ? `must be there, as ${issue.expected}` : `must be ${issue.expected}`;
    case 'too_small':
      return `must be ${bound(issue.origin, issue.inclusive ? 'at least' : 'more than', issue.minimum)}`;
    case 'too_big':
      return `must be ${bound(issue.origin, issue.inclusive ? 'at most' : 'less than', issue.maximum)}`;
    case 'invalid_format':
      return issue.format === 'date'
        ? 'must be a day that exists, YYYY-MM-DD'
        : 'is not written as it must be';
    case 'unrecognized_keys':
      return `has a field that is not known, ${issue.keys.slice(0, 3).map(shown).join(', ')}`;
    case 'invalid_value':
      return `must be one of ${issue.values.slice(0, 8).map(String).join(', ')}${issue.values.length > 8 ? ' …' : ''}`;
    case 'invalid_union':
      return 'is of no kind that is known';
    default:
      return 'is not what it must be';
  }
}

function bound(origin: string, how: string, limit: number | bigint): string {
  const unit = origin === 'string' ? ' letters long' : origin === 'array' ? ' entries long' : '';
  return `${how} ${limit}${unit}`;
}
