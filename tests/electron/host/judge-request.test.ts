import { describe, expect, test } from 'vitest';

import { judgeEntry, judgeRequest } from '#electron/host/judge-request.ts';

const address = 'http://127.0.0.1:41234';
const page = { method: 'POST', host: '127.0.0.1:41234', origin: address, site: 'same-origin' };

describe('judgeRequest', () => {
  test.each([
    ['the page itself', page],
    ['a link that was typed', { ...page, method: 'GET', origin: undefined, site: 'none' }],
    ['a browser that does not say', { ...page, site: undefined }],
  ])('%s may', (_, asked) => {
    expect(judgeRequest(asked, address)).toBeUndefined();
  });

  test.each([
    ['no host', { ...page, host: undefined }],
    ['another port', { ...page, host: '127.0.0.1:41235' }],
    ['a name bent to this address', { ...page, host: 'rebound.example:41234' }],
    ['a call without origin', { ...page, origin: undefined }],
    ['a page in a frame without origin', { ...page, origin: 'null' }],
    ['a page on another port', { ...page, origin: 'http://127.0.0.1:8080' }],
    ['a page on the network', { ...page, origin: 'http://127.0.0.1:41234.evil.example' }],
    ['what the browser calls cross-site', { ...page, site: 'cross-site' }],
    ['what the browser calls same-site', { ...page, site: 'same-site' }],
  ])('%s may not', (_, asked) => {
    expect(judgeRequest(asked, address)).toMatch(/\.$/);
  });
});

describe('judgeEntry', () => {
  test.each([
    ['the page itself', page, true],
    ['the file that opens a browser', { ...page, origin: 'null', site: 'cross-site' }, true],
    ['a page on another port', { ...page, origin: 'http://127.0.0.1:8080' }, false],
    ['a program that does not say', { ...page, origin: undefined }, false],
    ['a name bent to this address', { ...page, host: 'rebound.example:41234' }, false],
  ])('%s', (_, asked, may) => {
    expect(judgeEntry(asked, address) === undefined).toBe(may);
  });
});
