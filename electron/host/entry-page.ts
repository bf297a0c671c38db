import { entryPath, sessionItem } from '#shared-calc/contract/entry.ts';

import { freshNonce, guardHeaders } from './content-policy.ts';

/** The file that a browser is opened with: it posts the key once, so that no command line shows the key. */
export function entryForm(address: string, key: string): string {
  return `<!doctype html>
<meta charset="utf-8" />
<title>Loamwright</title>
<form method="post" action="${address}${entryPath}">
  <input type="hidden" name="key" value="${key}" />
  <button>Open Loamwright</button>
</form>
<script>
  document.forms[0].submit();
</script>
`;
}

/** What such a form is answered with: stores the secret for its tab, and goes to the page. */
export function entryAnswer(secret: string): { readonly headers: Record<string, string>; readonly body: string } {
  const nonce = freshNonce();
  return {
    headers: {
      ...guardHeaders,
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': `default-src 'none'; script-src 'nonce-${nonce}'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'`,
      'cache-control': 'no-store',
    },
    body: `<!doctype html>
<meta charset="utf-8" />
<title>Loamwright</title>
<noscript>Loamwright needs JavaScript to work.</noscript>
<script nonce="${nonce}">
  sessionStorage.setItem('${sessionItem}', '${secret}');
  location.replace('/');
</script>
`,
  };
}
