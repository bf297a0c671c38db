import { randomBytes } from 'node:crypto';

/** The page's content security policy: only its own files, no eval, styles by file or with the page's nonce. */
export function contentPolicy(nonce: string): string {
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "frame-ancestors 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** A value that is new on every page load. */
export function freshNonce(): string {
  return randomBytes(18).toString('base64');
}

/** Inserts the nonce where the page reads it. */
export function withNonce(page: string, nonce: string): string {
  return page.replace(/(<meta\s+name="style-nonce"\s+content=")[^"]*(")/, `$1${nonce}$2`);
}

/** Headers of every response. */
export const guardHeaders: Readonly<Record<string, string>> = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'x-frame-options': 'DENY',
  'permissions-policy':
    'camera=(), microphone=(), geolocation=(), display-capture=(), payment=(), usb=(), serial=(), hid=()',
};
