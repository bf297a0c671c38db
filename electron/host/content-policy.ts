import { randomBytes } from 'node:crypto';

/** The walls of the page: nothing but its own files, no code made from text, styles by file or by the page's nonce. */
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

/** A word that no earlier page load had. */
export function freshNonce(): string {
  return randomBytes(18).toString('base64');
}

/** Writes the nonce where the page looks for it. */
export function withNonce(page: string, nonce: string): string {
  return page.replace(/(<meta\s+name="style-nonce"\s+content=")[^"]*(")/, `$1${nonce}$2`);
}

/** What every answer carries, whatever it is. */
export const guardHeaders: Readonly<Record<string, string>> = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'x-frame-options': 'DENY',
};
