import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

/* A heater by the tank, no socket and no residual-current device: whoever works on that job reads it, and who decides. */

const { book } = useDemoBook('2027-03-08');
const Answer = z.object({ cautions: z.array(z.object({ id: z.string().nullable(), decides: z.string() })) });
const found = ['noResidualCurrent', 'noSocketNear', 'heaterNear'];

async function minded(...argv: readonly string[]): Promise<readonly (string | null)[]> {
  const { cautions } = Answer.parse(await lwJson(...argv, '--on', '2027-03-08', '--book', book()));
  return cautions.map(({ id }) => id);
}

beforeAll(async () => {
  const survey = { residualCurrentDevice: 'no', socketNear: 'no', heaterNear: 'yes' };
  await lw('act', 'writeSurvey', JSON.stringify({ job: 'J01', survey }), '--book', book());
});

describe('what the survey found', () => {
  test.each([
    ['the bench of the job', ['bench', '--job', 'J01', '--lines', 'lamps']],
    ['its quote', ['quote', '--job', 'J01']],
    ['the options its client chooses from', ['paper', 'options', '--job', 'J01']],
    ['the quote on paper', ['paper', 'quote', '--job', 'J01']],
    ['the survey card', ['paper', 'survey', '--job', 'J01']],
    ['the build card', ['paper', 'build', '--job', 'J01']],
    ['the handover card', ['paper', 'handover', '--job', 'J01']],
  ] as const)('stands on %s', async (_, argv) => {
    const ids = await minded(...argv);
    expect(found.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('sizes without a job have no place, and nothing is said of one', async () => {
    const ids = await minded('bench', '--sizes', 'T07', '--lines', 'lamps');
    expect(ids.filter((id) => found.includes(id ?? '') || id === 'residualCurrentNotAsked')).toEqual([]);
  });
});
