import { describe, expect, test } from 'vitest';

import { readPort } from '#electron/cli/read-port.ts';

describe('readPort', () => {
  test.each([
    [undefined, { ok: true, value: undefined }],
    ['1', { ok: true, value: 1 }],
    ['65535', { ok: true, value: 65_535 }],
  ])('%j', (text, port) => {
    expect(readPort(text)).toEqual(port);
  });

  test.each(['0', '65536', '-1', '80.5', '8e1', 'http', '', ' 80'])('%j is no port', (text) => {
    expect(readPort(text)).toEqual({ ok: false, fault: `--port ${text}: a port is a number from 1 to 65535.` });
  });
});
