import { decodeTime } from 'ulid';
import { expect, it } from 'vitest';
import { goOnAfter, recordId } from '../../src/journal/recordId';

it('makes ids that are each later in order than the one before', () => {
  const ids = Array.from({ length: 1000 }, recordId);
  expect(ids.toSorted()).toEqual(ids);
  expect(new Set(ids).size).toBe(1000);
});

it('goes on after an id of a clock that goes ahead, and not before one that goes behind', () => {
  // ULID, github.com/ulid/spec: the first ten letters are milliseconds since 1970 in base 32; 02Y… lies in 2071.
  const ahead = '02Y00000000000000000000000';
  expect(recordId() < ahead).toBe(true);
  goOnAfter(ahead);
  const [next, later] = [recordId(), recordId()];
  expect(next > ahead && later > next).toBe(true);
  expect(decodeTime(next)).toBe(decodeTime(ahead) + 1);
  goOnAfter('01000000000000000000000000');
  goOnAfter('no id');
  expect(recordId() > later).toBe(true);
});
