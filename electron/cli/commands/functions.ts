import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { sayCaution } from '#shared-calc/cautions/all-cautions.ts';
import { cautionJson, mindedLines } from '#electron/cli/cautions-answer.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import type { Command } from '#electron/cli/command.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';

/** The function book: all entries in a table, or one in full. */
export const functionsCommand: Command = {
  name: 'functions',
  usage: 'functions [NAME]: the function book, or one entry of it in full',
  options: {},
  misuse: ({ words }) => (words.length > 1 ? 'Name one function: functions layer_volume.' : undefined),
  run: (given) => {
    const name = given.words[0];
    if (name === undefined) return { is: 'answer', json: tradeFunctions.map(entryOf), table: allInShort };
    const found = tradeFunctions.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (found) return { is: 'answer', json: entryOf(found), table: () => functionInFull(found) };
    return refusal(
      `No function called ${name}.${didYouMean(
        name,
        tradeFunctions.map((each) => each.name),
      )}`,
    );
  },
};

function entryOf(entry: TradeFunction) {
  const { compute: _compute, warn: _warn, gives, args, cautions = [], ...told } = entry;
  return {
    ...told,
    call: callOf(entry),
    args: args.map(argumentOf),
    gives: givesOf(gives),
    cautions: cautions.map((id) => cautionJson(sayCaution(id))),
  };
}

function argumentOf(argument: Argument) {
  return { ...argument, takes: takesOf(argument) };
}

function takesOf(argument: Argument): string {
  return typeof argument.takes === 'string' ? argument.takes : argument.takes.join(' | ');
}

function callOf(entry: TradeFunction): string {
  return entry.inRules ? `${entry.name}(${entry.args.map((each) => each.name).join(', ')})` : entry.title;
}

function givesOf(gives: TradeFunction['gives']): string {
  return typeof gives === 'string' ? gives : 'what its figures lead to';
}

/** One table a group. Functions over lists or dates serve the program itself and come last. */
function allInShort(): string {
  const groups = Map.groupBy(tradeFunctions, (each) => each.group);
  const rows = [...groups].flatMap(([group, entries]) => [[group.toUpperCase()], ...entries.map(rowOf)]);
  return `${textTable(['function', 'what it works out', 'gives'], rows)}\n\nfunctions NAME tells one in full. Names in capitals work over lists or dates and cannot stand in rules.`;
}

function rowOf(entry: TradeFunction): readonly string[] {
  return [entry.name, entry.title, givesOf(entry.gives)];
}

/** One function as text, in full. */
export function functionInFull(entry: TradeFunction): string {
  const lines = [
    `${entry.title}: ${entry.inRules ? callOf(entry) : entry.name}`,
    '',
    entry.help,
    '',
    `sum: ${entry.sum}`,
    `gives: ${givesOf(entry.gives)}`,
    ...(entry.inRules ? entry.args.map(sayArgument) : entry.args.map((each) => `  takes ${each.says ?? ''}`)),
    '',
    ...entry.examples.map((each) => `example: ${each.rule} = ${each.gives}`),
    `source: ${entry.source}`,
    ...mindedLines(
      [],
      (entry.cautions ?? []).map((id) => sayCaution(id)),
      plainDisplay,
    ),
  ];
  return lines.join('\n');
}

function sayArgument(argument: Argument): string {
  const says = argument.says === undefined ? '' : `, ${argument.says}`;
  return `  ${argument.name}: ${takesOf(argument)}${says}${rangeOf(argument)}`;
}

function rangeOf({ low, high, otherwise }: Argument): string {
  const range = low === undefined || high === undefined ? '' : `, usually ${low} to ${high}`;
  return otherwise === undefined ? range : `${range}, ${otherwise} where left out`;
}
