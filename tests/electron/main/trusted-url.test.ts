import { describe, expect, test } from 'vitest';

import { isPageUrl, isTrustedSender } from '#electron/main/trusted-url.ts';

const hostile = [
  '',
  'app:',
  'app://',
  'app://page.evil.example/',
  'app://evil.example/page/',
  'app://page@evil.example/',
  'app://evil@page/',
  'app://page:8080/',
  'apps://page/',
  'file:///etc/passwd',
  'http://page/',
  'https://page/',
  'http://evil.example/#app://page/',
  'https://evil.example/?app://page/',
  'javascript:alert(1)',
  'data:text/html,<p>app://page/</p>',
  'blob:app://page/1',
  'about:blank',
  'view-source:app://page/',
  '//page/',
  'page',
];

describe('isPageUrl', () => {
  test.each(['app://page/', 'app://page/index.html', 'app://page/#/quotes/Q-0027', 'APP://page/'])(
    '%s is the page',
    (address) => {
      expect(isPageUrl(address)).toBe(true);
    },
  );

  test.each(hostile)('%j is not', (address) => {
    expect(isPageUrl(address)).toBe(false);
  });
});

describe('isTrustedSender', () => {
  test('the page in the main frame may call', () => {
    expect(isTrustedSender({ url: 'app://page/index.html', parent: null })).toBe(true);
  });

  test('a frame within it, another page, and a frame that is gone may not', () => {
    expect(isTrustedSender({ url: 'app://page/', parent: { url: 'app://page/' } })).toBe(false);
    for (const url of hostile) expect(isTrustedSender({ url, parent: null })).toBe(false);
    expect(isTrustedSender(null)).toBe(false);
  });
});
