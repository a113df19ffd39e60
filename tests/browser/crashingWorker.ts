/** A worker that breaks with the first message, for testing what a page does then. */
addEventListener('message', () => {
  throw new Error('out of memory');
});
