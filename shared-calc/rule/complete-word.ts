import type { Kind } from '#shared-calc/quantity/kind.ts';
import { bestFirst, noCompletions, type Completion, type Completions, type Spot } from './completion.ts';
import { argumentWanted, type OpenCall } from './open-call.ts';
import type { Token } from './read-tokens.ts';

export function isQuoted(token: Token): boolean {
  return token.is === 'text' || (token.is === 'bad' && token.fault.kind === 'unclosed-text');
}

/** Within quotes: the words of the choice that the text stands beside. Quotes are closed where they are open. */
export function completeWord(spot: Spot, quoted: Token): Completions {
  const closed = quoted.is === 'text';
  if (closed && spot.cursor === quoted.to) return noCompletions(spot.cursor);
  const typed = spot.text.slice(quoted.from + 1, spot.cursor);
  const words: readonly Completion[] = optionsOf(choiceBeside(spot)).map((label) => ({
    is: 'word',
    text: `"${label.replaceAll('"', '""')}"`,
    label,
  }));
  return { from: quoted.from, to: closed ? quoted.to : spot.cursor, options: bestFirst(words, typed) };
}

/** After `kit =` it is kit; as a `when` of pick what pick chooses by; else what the function takes there. */
function choiceBeside({ before, scope, call }: Spot): Kind | undefined {
  const [left, sign] = before.slice(-2);
  if (sign?.is === 'sign') return left?.is === 'word' ? scope.kindOfLine(left.word) : undefined;
  if (call?.fn !== 'pick') return argumentWanted(scope.functions, call);
  const choice = choiceOfPick(call);
  return choice === undefined ? undefined : scope.kindOfLine(choice);
}

function choiceOfPick({ argument, first }: OpenCall): string | undefined {
  return argument % 2 === 1 && first?.is === 'word' ? first.word : undefined;
}

function optionsOf(kind: Kind | undefined): readonly string[] {
  return kind?.is === 'choice' ? (kind.options ?? []) : [];
}
