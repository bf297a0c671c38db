import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';

/** The function book: all entries in a table, or one in full. */
export const functionsCommand: Command = {
  name: 'functions',
  usage: 'functions [NAME]: the function book, or one entry of it in full',
  options: {},
  run: (given) => {
    const name = given.words[0];
    if (name === undefined) {
      return {
        is: 'answer',
        json: tradeFunctions.map(entryOf),
        table: () => textTable(['function', 'gives', 'what it does'], tradeFunctions.map(rowOf)),
      };
    }
    const found = tradeFunctions.find((each) => each.name === name.toLowerCase());
    if (found) return { is: 'answer', json: entryOf(found), table: () => inFull(found) };
    const near = nearestName(name.toLowerCase(), tradeFunctions.map((each) => each.name));
    return refusal(`No function called ${name}.${near === undefined ? '' : ` Did you mean ${near}?`}`);
  },
};

function entryOf(entry: TradeFunction) {
  const { compute: _compute, warn: _warn, gives, args, ...told } = entry;
  return { ...told, call: callOf(entry), args: args.map(argumentOf), gives: typeof gives === 'string' ? gives : 'as its arguments' };
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

function rowOf(entry: TradeFunction): readonly string[] {
  return [callOf(entry), typeof entry.gives === 'string' ? entry.gives : 'as its arguments', entry.title];
}

function inFull(entry: TradeFunction): string {
  const lines = [
    `${entry.title}: ${callOf(entry)}`,
    '',
    entry.help,
    '',
    `sum: ${entry.sum}`,
    ...entry.args.map((each) => `  ${each.name}: ${takesOf(each)}${rangeOf(each)}${each.says ? `, ${each.says}` : ''}`),
    '',
    ...entry.examples.map((each) => `example: ${each.rule} = ${each.gives}`),
    `source: ${entry.source}`,
  ];
  if (entry.caution !== undefined) lines.push(`caution: ${entry.caution}`);
  if (entry.decides !== undefined) lines.push(`who decides: ${entry.decides}`);
  return lines.join('\n');
}

function rangeOf({ low, high, otherwise }: Argument): string {
  const range = low === undefined && high === undefined ? '' : `, usual ${low ?? ''}..${high ?? ''}`;
  return otherwise === undefined ? range : `${range}, ${otherwise} where left out`;
}
