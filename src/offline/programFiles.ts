/** What one version of the program consists of; the build writes it into the service worker. */
export interface ProgramFiles {
  /** Of the content of all files: another version, another name. */
  readonly version: string;
  /** Files whose name changes with their content, from the program's folder. */
  readonly lasting: readonly string[];
  /** Files that keep their name; the empty name is the page itself. */
  readonly changing: readonly string[];
  /** Lasting files that are large and seldom needed: kept from their first use on. */
  readonly later: readonly string[];
  /** Sent with every file from the copy, so that the page stays walled in wherever the files come from. */
  readonly headers: Readonly<Record<string, string>>;
}
