import * as z from 'zod/mini';

// The page's security policy forbids code made from text, which zod otherwise uses to run faster.
z.config({ jitless: true });

/**
 * ULID: 26 letters of Crockford's base 32; see github.com/ulid/spec. Of a time before the middle of 2109: the newest
 * record of a thing counts, and after the last time that an id can tell nothing newer could be said.
 */
export const recordId = z.string().check(z.regex(/^0[0-3][0-9A-HJKMNP-TV-Z]{24}$/));

/** A day that exists, YYYY-MM-DD (ISO 8601). */
export const day = z.iso.date();

/** SHA-256 of a photo, hexadecimal. */
export const photoKey = z.string().check(z.regex(/^[0-9a-f]{64}$/));

/** A name or another line of text. */
export const line = z.string().check(z.maxLength(200));

/** A few sentences. */
export const sentences = z.string().check(z.maxLength(2000));

/** Finite, as are all numbers below. */
export const number = z.number();
export const notNegative = z.number().check(z.gte(0));
export const positive = z.number().check(z.gt(0));
export const share = z.number().check(z.gte(0), z.lte(1));

/** Row and column in pixels; outlines may reach a little beyond the photo. */
export const pixelPoint = z.tuple([number, number]);

/** What all records have. */
export const kept = { id: recordId, corrects: z.exactOptional(recordId) };

/** A list of so many entries at most. */
export const list = <T extends z.core.$ZodType>(entry: T, most: number, least = 0) =>
  z.array(entry).check(z.minLength(least), z.maxLength(most));
