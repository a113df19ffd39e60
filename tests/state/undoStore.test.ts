import { expect, it } from 'vitest';
import { createUndoStore } from '../../src/state/undoStore';

it('goes back once from what was done last, and from nothing before that', () => {
  const gone: string[] = [];
  const store = createUndoStore();
  const done = (name: string) => store.getState().done({ said: () => name, undo: () => gone.push(name) });
  done('first');
  done('second');
  expect(store.getState().last?.said()).toBe('second');
  store.getState().undo();
  store.getState().undo();
  expect(gone).toEqual(['second']);
});

it('offers no way back once it is forgotten', () => {
  const store = createUndoStore();
  let undone = false;
  store.getState().done({ said: () => 'removed', undo: () => (undone = true) });
  store.getState().forget();
  store.getState().undo();
  expect(undone).toBe(false);
});
