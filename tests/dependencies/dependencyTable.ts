import { askedFor, lockedPackages } from './packages';
import { REASONS } from './reasons';

const BEGIN = '<!-- made by npm run dependencies -->';
const END = '<!-- end of what is made -->';
const PLACES = ['page', 'command and build', 'checks'];

/** What is asked for in package.json, with its license from package-lock.json and why it is there, in Markdown. */
export function dependencyTable(): string {
  const locked = lockedPackages();
  const rows = Object.keys(askedFor()).map((name) => {
    const { version, license } = locked.get(`node_modules/${name}`) ?? {};
    const [place, reason] = REASONS[name] ?? [];
    return { name, version, license, place: place ?? '?', reason: reason ?? '?' };
  });
  rows.sort((a, b) => PLACES.indexOf(a.place) - PLACES.indexOf(b.place) || (a.name < b.name ? -1 : 1));
  return [
    '| package | version | license | at work in | for |',
    '|---|---|---|---|---|',
    ...rows.map((row) => `| ${row.name} | ${row.version} | ${row.license} | ${row.place} | ${row.reason} |`),
  ].join('\n');
}

/**
 * @param text - A document in which the table has its place.
 * @throws Error if it has none.
 */
export function withTable(text: string): string {
  const [start, end] = [text.indexOf(BEGIN), text.indexOf(END)];
  if (start < 0 || end < start) throw new Error('The document has no place for the table.');
  return `${text.slice(0, start)}${BEGIN}\n\n${dependencyTable()}\n\n${text.slice(end)}`;
}
