import { createRoot } from 'react-dom/client';
import { expect, it, vi } from 'vitest';
import { page } from 'vitest/browser';
import { BrokenScreen } from '../../src/ui/parts/BrokenScreen';

function Screen({ place }: { place: string }) {
  if (place === '/broken') throw new Error('the canvas is gone');
  return <p>All is well at {place}.</p>;
}

it('says that a screen broke and what to do, and goes on elsewhere', async () => {
  // React tells the console of every error it catches.
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const root = createRoot(document.body.appendChild(document.createElement('div')), {
    onCaughtError: () => undefined,
  });
  const go = (place: string) =>
    root.render(
      <BrokenScreen place={place}>
        <Screen place={place} />
      </BrokenScreen>,
    );
  go('/');
  await expect.element(page.getByText('All is well at /.')).toBeVisible();
  go('/broken');
  await expect.element(page.getByRole('alert')).toHaveTextContent('This screen broke (the canvas is gone).');
  await expect.element(page.getByRole('button', { name: 'Open the page again' })).toBeVisible();
  go('/journal');
  await expect.element(page.getByText('All is well at /journal.')).toBeVisible();
  expect(page.getByRole('alert').elements()).toEqual([]);
  root.unmount();
});
