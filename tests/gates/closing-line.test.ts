import { describe, expect, test } from 'vitest';
import { closingLine, countEnding, countReport } from '#tests/closing-line.ts';

const passedFile = { status: 'passed', assertionResults: [{ status: 'passed' }, { status: 'skipped' }] };
const failedFile = { status: 'failed', assertionResults: [{ status: 'passed' }, { status: 'failed' }] };
const fallenFile = { status: 'failed', assertionResults: [] };
const report = { numPassedTests: 2, numFailedTests: 1, numPendingTests: 1, numTodoTests: 0 };

describe('countReport', () => {
  test('a file that could not be read counts as a failure of its own', () => {
    const testResults = [passedFile, failedFile, fallenFile];

    expect(countReport({ ...report, testResults })).toEqual({ passed: 2, failed: 2, skipped: 1 });
  });
});

describe('countEnding', () => {
  test('a run that ended badly is never green', () => {
    const green = { passed: 9, failed: 0, skipped: 0 };

    expect(countEnding(green, 1)).toEqual({ passed: 9, failed: 1, skipped: 0 });
    expect(countEnding(green, 0)).toEqual(green);
    expect(countEnding({ ...green, failed: 3 }, 1)).toEqual({ passed: 9, failed: 3, skipped: 0 });
  });
});

describe('closingLine', () => {
  test.each([
    [{ passed: 412, failed: 0, skipped: 0 }, '412 passed, 0 failed'],
    [{ passed: 1, failed: 2, skipped: 0 }, '1 passed, 2 failed'],
    [{ passed: 1, failed: 0, skipped: 3 }, '1 passed, 0 failed, 3 skipped'],
  ])('%o reads %s', (count, line) => {
    expect(closingLine(count)).toBe(line);
  });
});
