import type { Act } from '#shared-calc/acts/act.ts';
import { runAct } from '#shared-calc/acts/act.ts';
import { makeRecipe } from '#shared-calc/acts/make-recipe.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Book } from '#electron/book/book.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusedAct, writeChange } from '#electron/cli/job-acts.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readText } from '#electron/cli/read-text.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { wordsMisuse } from '#electron/cli/words-misuse.ts';
import { today } from '#electron/service/today.ts';

/** A whole recipe of answers, on any book. */
export const recipeNewCommand: Command = {
  name: 'recipe new',
  usage:
    'recipe new H5 --title T [--answers JSON|-] [--try]: makes a recipe of answers: {"drainage":"40 mm","soil":true,"mix":[{"what":"coir","parts":3}],"light":true}',
  options: { ...bookOption, title: 'text', answers: 'text', try: 'flag' },
  misuse: (given) =>
    wordsMisuse(given, ['code of the recipe, as H5']) ??
    (given.text('title') === undefined ? 'Say what it is called: --title "Dry planted".' : undefined) ??
    (answersOf(given) === undefined ? '--answers: it is no JSON.' : undefined),
  run: (given) => withBook(given, (book) => made(book, given)),
};

/** Read once: standard input has no second time. */
const read = new WeakMap<Arguments, unknown>();

function answersOf(given: Arguments): unknown {
  if (read.has(given)) return read.get(given);
  const text = given.text('answers') ?? '{}';
  const answers = parsed(text === '-' ? (readText('-') ?? '') : text);
  read.set(given, answers);
  return answers;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function made(book: Book, given: Arguments): Outcome {
  const [id] = given.words;
  const done = runAct(makeRecipe as Act, derive(book.records(), today()), {
    id,
    title: given.text('title'),
    answers: answersOf(given),
  });
  if (!done.ok) return refusedAct(done.fault);
  const says = given.flag('try') ? undefined : writeChange(book, done.value);
  return says === undefined ? answerOf(done.value) : refusal(says);
}

function answerOf({ label, added }: Change): Outcome {
  const lines = added.flatMap((each) => (each.kind === 'line' ? [each.record] : []));
  const materials = added.flatMap((each) => (each.kind === 'material' ? [each.record] : []));
  const missing = lines.filter(({ role, text }) => role === 'given' && text === '');
  const [recipe] = added.flatMap((each) => (each.kind === 'recipe' ? [each.record] : []));
  return {
    is: 'answer',
    json: {
      recipe: recipe?.id,
      title: recipe?.title,
      lines: lines.length,
      needsFigure: missing.map((line) => ({ line: line.name, label: lineLabel(line) })),
      materials: materials.map((each) => ({ id: each.id, label: each.label, unit: each.unit })),
    },
    table: () =>
      [
        `Done: ${label}; ${lines.length} lines, ${materials.length} materials.`,
        ...missing.map((line) => `Needs a figure: ${lineLabel(line)}.`),
      ].join('\n'),
  };
}
