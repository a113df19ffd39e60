/** The part of exifr that reads JPEG files: a third of the whole. */
declare module 'exifr/dist/mini.esm.mjs' {
  export { default } from 'exifr';
}
