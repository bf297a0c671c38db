import { bestFirst, noCompletions, type Completion, type Completions, type Spot } from './completion.ts';
import { generalFunctions } from './general.ts';
import { kindFits } from './kind-fits.ts';
import { argumentWanted } from './open-call.ts';

/** Completions where a figure may begin or has begun: lines, functions, yes and no. */
export function completeFigure(spot: Spot): Completions {
  const { text, cursor, inside } = spot;
  if (!wantsFigure(spot)) return noCompletions(cursor);
  if (inside?.is !== 'word') return { from: cursor, to: cursor, options: figuresFor(spot) };
  const typed = text.slice(inside.from, cursor);
  return { from: inside.from, to: inside.to, options: bestFirst(figuresFor(spot), typed) };
}

/** Everything that a figure may begin with; in a call, lines that fit its argument come first. */
export function figuresFor({ scope, call }: Spot): readonly Completion[] {
  const wanted = argumentWanted(scope.functions, call);
  const fits = (name: string) => {
    const kind = scope.kindOfLine(name);
    return !wanted || !kind || kindFits(wanted, kind);
  };
  const { lineNames, functions } = scope;
  const lines = [...lineNames.filter(fits), ...lineNames.filter((name) => !fits(name))];
  const calls = [...functions.keys(), ...generalFunctions.keys()];
  return [
    ...lines.map((name) => ({ is: 'line' as const, text: name, label: name })),
    ...calls.map((name) => ({ is: 'function' as const, text: `${name}(`, label: name })),
    ...['yes', 'no'].map((label) => ({ is: 'answer' as const, text: label, label })),
  ];
}

function wantsFigure({ inside, before }: Spot): boolean {
  if (inside && inside.is !== 'word') return false;
  const last = before.at(-1)?.is ?? 'sign';
  return last === 'sign' || last === 'open' || last === 'comma';
}
