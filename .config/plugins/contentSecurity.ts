import type { Plugin } from 'vite';

/** What the page may load: its own files and nothing else; WebAssembly but no `eval`. */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "connect-src 'self' blob:",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Cross-origin isolation, which lets the neural engine use several threads. */
export const ISOLATION_HEADERS = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

/**
 * Puts the policy into the built page and into the preview server's headers.
 * The development server goes without: the React plugin's preamble is an inline script.
 */
export function contentSecurity(): Plugin {
  return {
    name: 'content-security',
    config: () => ({
      preview: { headers: { ...ISOLATION_HEADERS, 'Content-Security-Policy': CONTENT_SECURITY_POLICY } },
    }),
    transformIndexHtml: {
      order: 'post',
      handler: (_html, context) =>
        context.server
          ? []
          : [
              {
                tag: 'meta',
                injectTo: 'head-prepend',
                attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
              },
            ],
    },
  };
}
