import { describe, expect, test } from 'vitest';
import { textTable } from '#electron/cli/text-table.ts';

describe('textTable', () => {
  test('columns are as wide as their longest entry, figures stand at the right, and no line ends in blanks', () => {
    const rows = [['Coir', '13.71', 'L'], ['Fern \u00d7 2', '9.1', ''], ['SOIL']];
    expect(textTable(['material', 'used', ''], rows, [1]).split('\n')).toEqual([
      'material   used',
      '--------  -----  -',
      'Coir      13.71  L',
      'Fern \u00d7 2    9.1',
      'SOIL',
    ]);
  });

  test('a table without rows is its head', () => {
    expect(textTable(['a', 'bb'], [])).toBe('a  bb\n-  --');
  });
});
