/** OpenCV's start-up function, taken out of opencv-wasm by `.config/plugins/openCvFactory.ts`. */
declare module 'virtual:opencv-factory' {
  const startOpenCv: (settings: {
    instantiateWasm: (
      imports: WebAssembly.Imports,
      receive: (instance: WebAssembly.Instance, module: WebAssembly.Module) => void,
    ) => WebAssembly.Exports;
    onRuntimeInitialized: () => void;
    print: (text: string) => void;
    printErr: (text: string) => void;
  }) => import('./openCvShape').OpenCv;
  export default startOpenCv;
}
