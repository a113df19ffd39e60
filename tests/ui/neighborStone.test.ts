import { expect, it } from 'vitest';
import { neighborStone } from '../../src/ui/tray/neighborStone';

// 1 . 2
// . 3 .
// 4 . 5
const stones = [
  { id: 1, center: [0, 0] },
  { id: 2, center: [0, 20] },
  { id: 3, center: [10, 10] },
  { id: 4, center: [20, 0] },
  { id: 5, center: [20, 20] },
] as const;

it('goes by number to the left and to the right', () => {
  expect(neighborStone(stones, 2, 'ArrowRight')).toBe(3);
  expect(neighborStone(stones, 4, 'ArrowLeft')).toBe(3);
});

it('goes to the nearest stone above and below', () => {
  expect(neighborStone(stones, 1, 'ArrowDown')).toBe(4);
  expect(neighborStone(stones, 5, 'ArrowUp')).toBe(2);
  expect(neighborStone(stones, 3, 'ArrowUp')).toBe(1);
});

it('stays at the edge of the tray', () => {
  expect(neighborStone(stones, 1, 'ArrowLeft')).toBeNull();
  expect(neighborStone(stones, 5, 'ArrowRight')).toBeNull();
  expect(neighborStone(stones, 5, 'ArrowDown')).toBeNull();
});

it('goes to the first and the last number by Home and End', () => {
  expect(neighborStone(stones, 3, 'Home')).toBe(1);
  expect(neighborStone(stones, 3, 'End')).toBe(5);
});

it('reaches every stone from every other by arrows alone', () => {
  for (const start of stones) {
    const reached = new Set<number>([start.id]);
    for (const from of reached) {
      for (const key of ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight']) {
        const next = neighborStone(stones, from, key);
        if (next !== null) reached.add(next);
      }
    }
    expect([...reached].sort()).toEqual([1, 2, 3, 4, 5]);
  }
});

it('leads nowhere by other keys or on an empty tray', () => {
  expect(neighborStone(stones, 3, 'a')).toBeNull();
  expect(neighborStone([], null, 'Home')).toBeNull();
});
