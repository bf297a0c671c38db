import { parseArgs } from 'node:util';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';

/** What an option takes: nothing, one text, or one text each time it is given. */
export type OptionKind = 'flag' | 'text' | 'texts';
export type OptionTable = Readonly<Record<string, OptionKind>>;

export interface Arguments {
  readonly words: readonly string[];
  flag(name: string): boolean;
  text(name: string): string | undefined;
  texts(name: string): readonly string[];
}

/** Parses a command's words and options; an unknown option is refused, with the nearest known one. */
export function readArguments(argv: readonly string[], table: OptionTable): Result<Arguments, string> {
  const options = Object.fromEntries(
    Object.entries(table).map(([name, kind]) => [
      name,
      { type: kind === 'flag' ? ('boolean' as const) : ('string' as const), multiple: kind === 'texts' },
    ]),
  );
  const read = parseArgs({ args: [...argv], options, strict: false, tokens: true, allowPositionals: true });
  const words = new Map<number, string>();
  for (const token of read.tokens) {
    const word = argv[token.index] ?? '';
    if (token.kind === 'positional' || isRule(word)) words.set(token.index, word);
    else if (token.kind === 'option') {
      const fault = optionFault(token, table);
      if (fault !== undefined) return failed(fault);
    }
  }
  const clash = clashOf(
    read.tokens.flatMap((token) => (token.kind === 'option' && !isRule(argv[token.index] ?? '') ? [token.name] : [])),
    table,
  );
  if (clash !== undefined) return failed(clash);
  const given = (name: string) => read.values[name];
  return ok({
    words: [...words.values()],
    flag: (name) => given(name) === true,
    text: (name) => {
      const value = given(name);
      return typeof value === 'string' ? value : undefined;
    },
    texts: (name) => {
      const value = given(name);
      return Array.isArray(value) ? value.map(String) : [];
    },
  });
}

/** Options start with two dashes: a word with one dash is a rule, unless it can only be an option, like `-x`. */
function isRule(word: string): boolean {
  return /^-[^-]/.test(word) && !/^-[a-z]+$/i.test(word);
}

/** Options that contradict each other, or themselves. */
function clashOf(names: readonly string[], table: OptionTable): string | undefined {
  const twice = names.find((name, at) => table[name] !== 'texts' && names.indexOf(name) !== at);
  if (twice !== undefined) return `--${twice} is given twice.`;
  return names.includes('json') && names.includes('csv') ? 'Choose one: --json or --csv.' : undefined;
}

function optionFault(
  token: { readonly name: string; readonly rawName: string; readonly value?: string | undefined },
  table: OptionTable,
): string | undefined {
  const kind = table[token.name];
  if (kind === undefined) {
    const near = nearestName(token.name, Object.keys(table));
    return `Unknown option ${token.rawName}.${near === undefined ? '' : ` Did you mean --${near}?`}`;
  }
  if (kind === 'flag' && token.value !== undefined) return `${token.rawName} takes no value.`;
  if (kind !== 'flag' && token.value === undefined) return `${token.rawName} needs a value.`;
  return undefined;
}
