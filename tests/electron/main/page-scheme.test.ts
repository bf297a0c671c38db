import { describe, expect, test } from 'vitest';

import { answerPage, pageSchemes } from '#electron/main/page-scheme.ts';
import { pageIn, temporaryFolder } from '#tests/electron/host/host-at-hand.ts';

describe('answerPage', () => {
  test('the page comes with its walls', async () => {
    const answer = answerPage({ url: 'app://page/', method: 'GET' }, pageIn(temporaryFolder()));
    const nonce = /content="([\w+/=]{24})"/.exec(await answer.text())?.[1];

    expect([answer.status, answer.headers.get('content-security-policy')]).toEqual([
      200,
      `default-src 'none'; script-src 'self'; style-src 'self' 'nonce-${nonce}'; img-src 'self' data:; font-src 'self'; connect-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'`,
    ]);
  });

  test('its files come by their names', async () => {
    const answer = answerPage({ url: 'app://page/assets/look.css', method: 'GET' }, pageIn(temporaryFolder()));

    expect([answer.status, answer.headers.get('content-type'), await answer.text()]).toEqual([
      200,
      'text/css; charset=utf-8',
      'body { color: black; }\n',
    ]);
  });

  test.each([
    'app://page/../secret.html',
    'app://page/..%2fsecret.html',
    'app://page/%2e%2e%2fsecret.html',
    'app://page/..%5csecret.html',
    'app://page//etc/passwd',
    'app://page/%2fetc%2fpasswd',
    'app://page/notes.exe',
    'app://page/%',
  ])('%s leads nowhere', (url) => {
    expect(answerPage({ url, method: 'GET' }, pageIn(temporaryFolder())).status).toBe(404);
  });

  test.each(['app://other/index.html', 'app://page:1/', 'file:///etc/passwd', 'https://page/'])(
    '%s is not answered',
    (url) => {
      expect(answerPage({ url, method: 'GET' }, pageIn(temporaryFolder())).status).toBe(403);
    },
  );

  test('nothing is taken in by this way', () => {
    expect(answerPage({ url: 'app://page/', method: 'POST' }, pageIn(temporaryFolder())).status).toBe(403);
  });
});

describe('pageSchemes', () => {
  test('the scheme stands under the rules of a safe page, and bends no policy', () => {
    expect(pageSchemes).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });
});
