import { derive } from '#shared-calc/derive/derived.ts';
import { readText } from '#electron/cli/read-text.ts';
import { z } from 'zod';
import type { Book } from '#electron/book/book.ts';
import { sayEditFault } from '#electron/book/say-book-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { wrongUse, type Outcome } from '#electron/cli/outcome.ts';
import { sayAgainst } from '#electron/cli/say-against.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { today } from '#electron/service/today.ts';
import { idsOf, runAct, type Act } from '#shared-calc/acts/act.ts';
import { allActs } from '#shared-calc/acts/all-acts.ts';
import { againstChange, allAgainst } from '#shared-calc/derive/against-change.ts';
import { isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { faultJson, sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { sayRecord } from '#shared-calc/words/say-record-fault.ts';

/** Every edit of the program, with the input it takes. */
export const actsCommand: Command = {
  name: 'acts',
  usage: 'acts: every edit of the program, with its input',
  options: {},
  misuse: ({ words: [word] }) => (word === undefined ? undefined : `What is ${word} for?`),
  run: () => ({
    is: 'answer',
    json: allActs.map(({ name, says, input }) => ({ name, says, input: inputSchema(input) })),
    table: () =>
      textTable(
        ['act', 'input', 'does'],
        allActs.map(({ name, says, input }) => [name, fieldsOf(input), says]),
      ),
  }),
};

function inputSchema(input: Act['input']): unknown {
  return z.toJSONSchema(input, { io: 'input' });
}

const Shape = z.object({
  properties: z.record(z.string(), z.unknown()).optional(),
  required: z.array(z.string()).default([]),
});

/** `job, state, on?`: the fields of an input; a question mark follows an optional one. */
function fieldsOf(input: Act['input']): string {
  const { properties, required } = Shape.parse(inputSchema(input));
  if (!properties) return 'kind, record';
  return Object.keys(properties)
    .map((name) => (required.includes(name) ? name : `${name}?`))
    .join(', ');
}

/** Runs one act in one transaction; with `--try`, shows the change without making it. */
export const actCommand: Command = {
  name: 'act',
  usage: 'act NAME JSON [--try]: does one act; - for JSON reads standard input; --try shows the change and makes none',
  options: { ...bookOption, try: 'flag' },
  run: (given) => {
    const [name, text, ...more] = given.words;
    if (name === undefined || text === undefined || more.length > 0)
      return wrongUse(`Say which act and its input: act remove '{"kind":"supplier","id":"S3"}'.`);
    const found = findAct(name);
    if (!found.ok) return wrongUse(found.fault);
    const input = readJson(text === '-' ? (readText('-') ?? '') : text);
    if (!input.ok) return wrongUse(input.fault);
    return withBook(given, (book) => doAct(book, found.value, { input: input.value, onlyTry: given.flag('try') }));
  },
};

function findAct(name: string): Result<Act, string> {
  const found = allActs.find((each) => each.name === name);
  if (found) return ok(found);
  const names = allActs.map((each) => each.name);
  const near = nearestName(name, names);
  return failed(`No act ${name}. ${near === undefined ? 'The command acts lists them.' : `Did you mean ${near}?`}`);
}

function readJson(text: string): Result<unknown, string> {
  try {
    const value: unknown = JSON.parse(text);
    return ok(value);
  } catch (error) {
    return failed(`The input is no JSON: ${error instanceof Error ? error.message : 'it cannot be read'}.`);
  }
}

interface ActRequest {
  readonly input: unknown;
  readonly onlyTry: boolean;
}

function doAct(book: Book, one: Act, { input, onlyTry }: ActRequest): Outcome {
  const derived = derive(book.records(), today());
  const done = runAct(one, derived, input);
  if (!done.ok) return { is: 'refused', says: [sayActFault(done.fault)], json: { fault: faultJson(done.fault) } };
  const change = done.value;
  const moved = againstChange(derived, change);
  const against = allAgainst(moved);
  if (!onlyTry && !isEmptyChange(change)) {
    const written = book.apply(change, book.revision());
    if (!written.ok) {
      const says = sayEditFault(written.fault);
      return { is: 'refused', says: [says], json: { fault: { kind: written.fault.kind, says } } };
    }
  }
  return {
    is: 'answer',
    json: { change, ids: idsOf(change), ...(moved.length > 0 && { against }) },
    table: () => changeTable(change, onlyTry),
    notices: sayAgainst(against),
  };
}

function changeTable(change: Change, onlyTry: boolean): string {
  if (isEmptyChange(change)) return 'Nothing to do: the book says so already.';
  const rows = [
    ...change.added.map(({ kind, record }) => ['added', sayRecord({ kind, id: record.id })]),
    ...change.updated.map(({ kind, to }) => ['changed', sayRecord({ kind, id: to.id })]),
    ...change.removed.map(({ kind, record }) => ['removed', sayRecord({ kind, id: record.id })]),
  ];
  const done = onlyTry ? 'Tried only' : 'Done';
  return `${textTable(['', 'record'], rows)}\n\n${done}: ${change.label}.`;
}
