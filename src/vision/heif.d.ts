/** The part of libheif's interface used here; names are libheif's own. Handles are opaque. */
declare module 'libheif-js/libheif-wasm/libheif.js' {
  export interface Libheif {
    readonly heif_colorspace: { readonly heif_colorspace_RGB: unknown };
    readonly heif_chroma: { readonly heif_chroma_interleaved_RGBA: unknown };
    heif_context_alloc(): object | null;
    heif_context_free(context: object): void;
    heif_context_read_from_memory(context: object, bytes: Uint8Array): { readonly message: string };
    heif_js_context_get_primary_image_handle(context: object): object & { readonly code?: unknown };
    heif_image_handle_get_width(handle: object): number;
    heif_image_handle_get_height(handle: object): number;
    heif_image_handle_release(handle: object): void;
    /** Pixels are a view of the engine's memory, gone after `heif_image_release`; with a `code` it failed. */
    heif_js_decode_image2(handle: object, colors: unknown, chroma: unknown): DecodedHeif;
    heif_image_release(image: object): void;
  }
  export interface DecodedHeif {
    readonly code?: unknown;
    readonly image: object;
    readonly channels: readonly {
      readonly width: number;
      readonly height: number;
      /** Bytes from row to row. */
      readonly stride: number;
      readonly data: Uint8Array;
    }[];
  }
  export default function startLibheif(settings: { wasmBinary: Uint8Array }): Libheif;
}
