import { askEngines } from './askEngines';

/* Shows what the engines answered as the page's text, for the test that opens it. */
const show = (text: string) => document.querySelector('output')?.append(text);
askEngines().then(
  (answer) => show(JSON.stringify(answer)),
  (error: unknown) => show(String(error)),
);
