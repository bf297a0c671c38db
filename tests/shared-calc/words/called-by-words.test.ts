import { describe, expect, test } from 'vitest';
import { calledByWords } from '#shared-calc/words/called-by-words.ts';
import { sayBoxCause, sayBoxFault } from '#shared-calc/words/say-box-cause.ts';

describe('calledByWords', () => {
  test('a line that is in no recipe keeps its name, an argument without a meaning its words', () => {
    const called = calledByWords();
    expect([called.line('drain_gap'), called.lineFirst('drain_gap'), called.argument('none', 'longest_pane')]).toEqual([
      'drain_gap',
      'drain_gap',
      'Longest pane',
    ]);
    expect([
      sayBoxCause({ why: 'missing' }, 'drain_gap', called),
      sayBoxFault({ kind: 'not-an-option', text: 'blue', options: ['none', 'tube'] }, 'drain_access', called),
    ]).toEqual(['Needs a figure: drain_gap.', 'drain_access takes none or tube. You gave blue.']);
  });

  test('a size goes by the name it was given, one without a name by its key', () => {
    const called = calledByWords(undefined, [
      { key: 'T07', label: 'by the stairs' },
      { key: 'T08', label: '' },
    ]);
    expect(['T07', 'T08', 'T03'].map(called.size)).toEqual(['by the stairs', 'T08', 'T03']);
  });
});
