import type { Plugin } from 'vite';
import { PERMISSIONS_POLICY } from './permissionsPolicy.ts';

/** What the page may load: its own files and nothing else; WebAssembly but no `eval`, no inline script, no inline style. */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** What a page can say only in a header: that no other page may frame it. */
const HEADERS_ONLY = "frame-ancestors 'none'";

const REFERRER_POLICY = 'no-referrer';

/** Sent with every file, whether the policy is or not. Isolation lets the neural engine use several threads. */
export const COMMON_HEADERS = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': PERMISSIONS_POLICY,
  'Referrer-Policy': REFERRER_POLICY,
  'X-Content-Type-Options': 'nosniff',
};

/**
 * Sent with every file of the built page. Workers take their policy from the header of their own file, so a host that
 * sends none leaves them without until the copy on the device answers (`src/offline`), which adds these.
 */
export const PAGE_HEADERS = {
  'Content-Security-Policy': `${CONTENT_SECURITY_POLICY}; ${HEADERS_ONLY}`,
  ...COMMON_HEADERS,
};

/**
 * Puts what a page can say of itself into the built page, and everything into the preview server's headers.
 * The development server goes without the policy: the React plugin's preamble is an inline script.
 */
export function contentSecurity(): Plugin {
  return {
    name: 'content-security',
    config: () => ({ server: { headers: COMMON_HEADERS }, preview: { headers: PAGE_HEADERS } }),
    transformIndexHtml: {
      order: 'post',
      handler: (_html, context) =>
        context.server
          ? []
          : [
              meta({ 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY }),
              meta({ name: 'referrer', content: REFERRER_POLICY }),
            ],
    },
  };
}

const meta = (attrs: Record<string, string>) => ({ tag: 'meta', injectTo: 'head-prepend', attrs }) as const;
