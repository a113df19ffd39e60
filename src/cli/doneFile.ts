import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { createReadStream, createWriteStream } from 'node:fs';
import { appendFile, open, rename, rm, stat, truncate, writeFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { finished } from 'node:stream/promises';
import { Misuse } from './misuse';

/** Where a photo's entry lies in the file of what is done. */
interface Place {
  readonly at: number;
  readonly length: number;
}

/** One line: a photo as it was when it was graded, and its entry. */
interface Line {
  readonly path: string;
  readonly bytes: number;
  readonly changedMs: number;
  readonly isRefused: boolean;
}

const ENTRY = ',"entry":';

/**
 * What is done of a long run, photo by photo, in a file beside the one to be written: a run that was stopped goes on from
 * it. Only places in that file are held in memory. A last line that was cut short is dropped.
 */
export class DoneFile {
  readonly #jsonFile: string;
  readonly #partFile: string;
  readonly #places = new Map<string, Place>();
  #bytes = 0;
  #isAnyRefused = false;

  private constructor(jsonFile: string) {
    this.#jsonFile = jsonFile;
    this.#partFile = `${jsonFile}.part`;
  }

  /**
   * @param jsonFile - The file to be written in the end.
   * @param settings - All that results depend on beside the photos: what other settings left is not used.
   * @throws Misuse when nothing can be written there.
   */
  static async open(jsonFile: string, settings: unknown): Promise<DoneFile> {
    const done = new DoneFile(jsonFile);
    const head = createHash('sha256').update(JSON.stringify(settings)).digest('hex');
    try {
      await done.#read(head);
    } catch (error) {
      if (error instanceof Misuse) throw error;
      throw new Misuse(`Cannot write "${jsonFile}".`);
    }
    return done;
  }

  /** Whether this photo, unchanged, was done before. */
  has(path: string): boolean {
    return this.#places.has(path);
  }

  /** Whether any photo that is done was refused. */
  get isAnyRefused(): boolean {
    return this.#isAnyRefused;
  }

  /** Notes a photo's entry, JSON, at once. */
  async add(path: string, entry: string, isRefused: boolean): Promise<void> {
    const { size, mtimeMs } = await stat(path);
    const about = JSON.stringify({ path, bytes: size, changedMs: mtimeMs, isRefused }).slice(0, -1) + ENTRY;
    const at = this.#bytes + Buffer.byteLength(about);
    const length = Buffer.byteLength(entry);
    this.#places.set(path, { at, length });
    this.#isAnyRefused ||= isRefused;
    this.#bytes = at + length + 2;
    await appendFile(this.#partFile, `${about}${entry}}\n`);
  }

  /**
   * Writes the whole document, of those of these photos that are done, in their order.
   *
   * @param isOver - Whether the file of what is done may go: else the same command goes on from it.
   */
  async finish(paths: readonly string[], isOver: boolean): Promise<void> {
    const draft = `${this.#jsonFile}.draft`;
    const file = await open(this.#partFile);
    const out = createWriteStream(draft);
    out.write('{"schema":1,"photos":[');
    let isFirst = true;
    for (const path of paths) {
      const place = this.#places.get(path);
      if (!place) continue;
      const { buffer } = await file.read(Buffer.alloc(place.length), 0, place.length, place.at);
      if (!isFirst) out.write(',');
      isFirst = false;
      if (!out.write(buffer)) await once(out, 'drain');
    }
    out.end(']}\n');
    await finished(out);
    await file.close();
    await rename(draft, this.#jsonFile);
    if (isOver) await rm(this.#partFile);
  }

  async #read(head: string): Promise<void> {
    const isThere = (await stat(this.#partFile).catch(() => null)) !== null;
    const lines = isThere ? createInterface({ input: createReadStream(this.#partFile) }) : [];
    let isHead = true;
    for await (const text of lines) {
      if (isHead && text !== head) break;
      if (!isHead && !(await this.#take(text))) break;
      this.#bytes += Buffer.byteLength(text) + 1;
      isHead = false;
    }
    if (isHead) {
      this.#places.clear();
      await writeFile(this.#partFile, `${head}\n`);
      this.#bytes = Buffer.byteLength(head) + 1;
      return;
    }
    // A line that a stop cut short goes, or what is added next would be part of it.
    const { size } = await stat(this.#partFile);
    if (size < this.#bytes) await appendFile(this.#partFile, '\n');
    else await truncate(this.#partFile, this.#bytes);
  }

  /** @returns Whether the line is whole. */
  async #take(text: string): Promise<boolean> {
    const line = parsed(text);
    if (line === null) return false;
    const { path, bytes, changedMs, isRefused } = line;
    // Quotes within a path are escaped, so this is the first one that is not.
    const entry = text.slice(text.indexOf(ENTRY) + ENTRY.length, -1);
    const length = Buffer.byteLength(entry);
    const at = this.#bytes + Buffer.byteLength(text) - 1 - length;
    const now = await stat(path).catch(() => null);
    // A photo that was changed since is graded again, and the later line counts.
    if (!now || now.size !== bytes || now.mtimeMs !== changedMs) return true;
    this.#places.set(path, { at, length });
    this.#isAnyRefused ||= isRefused;
    return true;
  }
}

function parsed(text: string): Line | null {
  try {
    return JSON.parse(text) as Line;
  } catch {
    return null;
  }
}
