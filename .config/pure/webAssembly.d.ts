/** What `src/kernels` needs beside the language itself: the same in every browser, every worker and Node. */
declare function atob(text: string): string;
declare namespace WebAssembly {
  interface Memory {
    readonly buffer: ArrayBuffer;
    grow(pages: number): number;
  }
  class Module {
    constructor(bytes: Uint8Array<ArrayBuffer>);
  }
  class Instance {
    constructor(module: Module);
    readonly exports: Record<string, unknown>;
  }
}
declare module '*?url&inline' {
  const address: string;
  export default address;
}
