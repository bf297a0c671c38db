import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { allActs } from '#shared-calc/acts/all-acts.ts';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const ActsJson = z.array(
  z.strictObject({ name: z.string(), says: z.string(), input: z.record(z.string(), z.unknown()) }),
);

describe('acts and act on the command line', () => {
  const { book } = useDemoBook();
  const act = (...argv: readonly string[]) => lw('act', ...argv, '--book', book());
  const json = async (...argv: readonly string[]) => {
    const { code, out, err } = await act(...argv, '--json');
    return { code, out: JSON.parse(out) as unknown, err };
  };
  const rate = { id: 'R-night', label: 'Night work', coins: 6200, per: 'h' };

  test('every act is listed with its input, for people and for programs', async () => {
    const listed = ActsJson.parse(await lwJson('acts'));
    expect(listed.map(({ name }) => name)).toEqual(allActs.map(({ name }) => name));
    expect(listed.find(({ name }) => name === 'moveJob')).toEqual({
      name: 'moveJob',
      says: 'Moves a job to a state; a job that is built takes its materials out of the Store. From built on, what stands against it needs a reason and who decides.',
      input: {
        $schema: 'https://json-schema.org/draft/2020-12/schema',
        type: 'object',
        properties: {
          job: { type: 'string' },
          state: { type: 'string' },
          quote: {
            type: 'string',
            description: 'To accepted: the quote that the client said yes to; left out, the latest.',
          },
          asIssued: {
            type: 'boolean',
            description: 'To accepted: puts the boxes of the job back to what the quote says.',
          },
          anyway: {
            type: 'string',
            maxLength: 10_000,
            description: 'Why it is done although something stands against it.',
          },
          who: { type: 'string', description: 'Who decides it: a rate of the rate book, such as R-builder.' },
        },
        required: ['job', 'state'],
        additionalProperties: false,
      },
    });
    const { out } = await lw('acts');
    const rows = out.split('\n').map((row) => row.trim().split(/ {2,}/));
    expect(rows.find(([name]) => name === 'moveJob')).toEqual([
      'moveJob',
      'job, state, quote?, asIssued?, anyway?, who?',
      'Moves a job to a state; a job that is built takes its materials out of the Store. From built on, what stands against it needs a reason and who decides.',
    ]);
    expect(rows.find(([name]) => name === 'put')?.[1]).toBe('kind, record');
  });

  test('an act that is tried shows its change and makes none; done, it is in the book', async () => {
    const input = JSON.stringify({ kind: 'rate', record: rate });
    const change = {
      label: 'rate R-night added',
      added: [{ kind: 'rate', record: rate }],
      updated: [],
      removed: [],
    };
    expect(await json('put', input, '--try')).toEqual({ code: 0, out: { change, ids: ['R-night'] }, err: '' });
    expect(await act('put', input, '--try')).toEqual({
      code: 0,
      out: '       record\n-----  ------------\nadded  rate R-night\n\nTried only: rate R-night added.\n',
      err: '',
    });
    expect((await act('put', input)).out).toMatch(/Done: rate R-night added\.\n$/);
    expect(await act('put', input)).toEqual({
      code: 0,
      out: 'Nothing to do: the book says so already.\n',
      err: '',
    });
  });

  test('a refusal is a fact for programs and a sentence for people', async () => {
    const { code, out, err } = await json('remove', '{"kind":"tank","id":"T03"}');
    const says = 'Tank T03 is still used by size J01-T03.';
    expect({ code, out, err }).toEqual({
      code: 1,
      out: {
        fault: {
          kind: 'still-used',
          says,
          at: 'tank T03',
          against: [{ what: 'size J01-T03', why: 'it names T03' }],
        },
      },
      err: `${says}\n`,
    });
    expect(await act('moveJob', '{"job":"J01","state":"built"}')).toEqual({
      code: 1,
      out: '',
      err: 'J01 cannot be built: its deposit is not in. Record it with its day, or accept the quote first.\n',
    });
    expect((await json('put', '{"kind":"supplier"}')).out).toEqual({
      fault: {
        kind: 'bad-input',
        says: 'Record is missing; it wants an object with its fields.',
        at: 'record',
      },
    });
  });

  test.each([
    [['putt', '{}'], 'No act putt. Did you mean put?'],
    [['fly', '{}'], 'No act fly. The command acts lists them.'],
    [['put'], `Say which act and its input: act remove '{"kind":"supplier","id":"S3"}'.`],
  ])('%j is wrong use', async (argv, says) => {
    expect(await act(...argv)).toEqual({ code: 2, out: '', err: `${says}\n` });
  });

  test('an input that is no JSON is wrong use', async () => {
    const { code, err } = await act('put', '{kind');
    expect(code).toBe(2);
    expect(err).toMatch(/^The input is no JSON: /);
  });
});
