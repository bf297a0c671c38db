import { describe, expect, test } from 'vitest';
import { fileName } from '#renderer/files/download-csv.ts';

describe('fileName', () => {
  test.each([
    ['needs, Ferry waiting hall', 'needs Ferry waiting hall.csv'],
    ['bench.csv', 'bench.csv'],
    ['../../etc/passwd', 'etc passwd.csv'],
    ['a/b\\c:d*e?f"g<h>i|j', 'a b c d e f g h i j.csv'],
    ['Große Höhle', 'Große Höhle.csv'],
    ['...', 'list.csv'],
    ['', 'list.csv'],
  ])('%s is kept as %s', (name, file) => {
    expect(fileName(name)).toBe(file);
  });
});
