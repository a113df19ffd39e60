/** Longest side of what a journal keeps of a photo, and of its thumbnail, pixels, and the JPEG quality of both, 0 to 1; the same for page and command. */
export const KEPT = { photoPx: 2000, thumbnailPx: 320, quality: 0.86 } as const;
