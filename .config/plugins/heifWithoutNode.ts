import type { Plugin } from 'vite';

const EMPTY_ID = '\0no-node';

/** Gives libheif's glue, which asks for Node's modules only when it runs there, empty ones in the page. */
export function heifWithoutNode(): Plugin {
  return {
    name: 'heif-without-node',
    enforce: 'pre',
    applyToEnvironment: (environment) => environment.config.consumer === 'client',
    resolveId: (id, importer) =>
      /^(fs|path|crypto)$/.test(id) && importer?.includes('libheif-js') ? EMPTY_ID : undefined,
    load: (id) => (id === EMPTY_ID ? 'export default {};' : undefined),
  };
}
