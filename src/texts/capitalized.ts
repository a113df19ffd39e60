/** A text with a capital at its head, for one that may also stand within a sentence. */
export const capitalized = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
