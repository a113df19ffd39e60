/** For every test that runs in the browser itself: nothing is asked of any other server. */
import { afterAll, expect } from 'vitest';

// Browsers forget what is asked beyond 250 files unless told otherwise.
performance.setResourceTimingBufferSize(10_000);

afterAll(() => {
  const asked = performance.getEntriesByType('resource').map(({ name }) => name);
  const foreign = asked.filter(
    (name) => /^(https?|wss?):/.test(name) && new URL(name).host !== location.host,
  );
  expect(foreign).toEqual([]);
});
