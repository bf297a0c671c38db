import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Button } from '#renderer/kit/button.tsx';
import { CautionParts } from '#renderer/kit/caution.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { separated } from '#shared-calc/rule/separated.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { sayCaution } from '#shared-calc/cautions/all-cautions.ts';
import { sayDecided } from '#shared-calc/words/who-decides.ts';
import { argumentWords, givesWords } from './function-words.ts';
import { whenRefused } from './when-refused.ts';
import css from './function-book.module.css';

interface LeafParts {
  readonly entry: TradeFunction;
  readonly context: BookContext;
  /** Puts an example into the form. */
  readonly tryExample: (rule: string) => void;
}

/** One function in full: its purpose, arguments, formula, examples and source. */
export function FunctionLeaf({ entry, context, tryExample }: LeafParts) {
  return (
    <article class={css['leaf']} tabIndex={0} aria-label={entry.title}>
      <header>
        <h2>{entry.title}</h2>
        <p class={css['written']}>
          <span class={css['name']}>{entry.name}</span>
          {entry.inRules && shownRule(`(${entry.args.map(({ name }) => name).join(', ')})`, context)}{' '}
          <span class={css['gives']}>{givesWords(entry.gives)}</span>
        </p>
      </header>
      <p class={css['purpose']}>{entry.help}</p>
      <section>
        <h3>What to put in</h3>
        {entry.inRules ? <Arguments entry={entry} /> : <p>{entry.args[0]?.says}</p>}
      </section>
      <section>
        <h3>The sum in words</h3>
        <p class={css['sumInWords']}>{entry.sum.replaceAll(' x ', ' × ')}</p>
      </section>
      {entry.examples.length > 0 && <Examples entry={entry} context={context} tryExample={tryExample} />}
      <RefusalsAndUsers entry={entry} records={context.records} />
      <section>
        <h3>How we know</h3>
        <p>{sourceSentence(entry)}</p>
      </section>
      <CautionParts
        cautions={(entry.cautions ?? []).map((id) => {
          const caution = cautionInUnits(sayCaution(id), context.display);
          return { words: sayUnits(caution.says), decides: sayDecided(caution) };
        })}
      />
    </article>
  );
}

function Arguments({ entry }: { readonly entry: TradeFunction }) {
  return (
    <Table
      class={css['args']}
      label="What to put in"
      rows={entry.args.map((argument) => ({ name: argument.name, ...argumentWords(argument) }))}
      keyOf={({ name }) => name}
      columns={[
        { head: 'name', names: true, cell: ({ name }) => name },
        { head: 'kind', cell: ({ kind }) => kind },
        { head: 'unit', cell: ({ unit }) => unit },
        { head: 'usual range', cell: ({ range }) => range },
        { head: 'meaning', cell: ({ meaning }) => meaning },
      ]}
    />
  );
}

/** A rule as it is printed: `;` between arguments where the decimal comma is set. */
function shownRule(rule: string, { display }: BookContext): string {
  return display.decimalComma ? separated(rule) : rule;
}

function Examples({ entry, context, tryExample }: LeafParts) {
  return (
    <section>
      <h3>Worked examples</h3>
      <ul class={css['examples']}>
        {entry.examples.map(({ rule, gives }) => (
          <li key={rule}>
            <code>{shownRule(rule, context)}</code> <span class={css['givesFigure']}>gives {sayUnits(gives)}</span>
            {entry.inRules && rule.startsWith(`${entry.name}(`) && (
              <Button look="plain" aria-label={`Try it: ${rule}`} onClick={() => tryExample(rule)}>
                {actNames.tryIt}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function RefusalsAndUsers({ entry, records }: Pick<LeafParts, 'entry'> & { readonly records: Records }) {
  const refusals = entry.inRules ? whenRefused(entry) : [];
  const users = usersOf(entry.name, records);
  if (refusals.length + users.length === 0) return null;
  return (
    <section class={css['two']}>
      {refusals.length > 0 && (
        <div>
          <h3>When it refuses</h3>
          <ul class={css['refusals']}>
            {refusals.map((says) => (
              <li key={says}>
                <Sign name="range" />
                {says}
              </li>
            ))}
          </ul>
        </div>
      )}
      {users.length > 0 && (
        <div class={css['used']}>
          <h3>Where the house uses it</h3>
          <ul>
            {users.map((line) => (
              <li key={line.id}>
                <a href={writeRoute('recipe', line.recipe, line.name)}>
                  {line.recipe}, {inSentence(lineLabel(line))}
                </a>
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}

/** Lines of all house recipes that call it; the first dozen is enough. */
function usersOf(name: string, { line: lines }: Records): readonly Line[] {
  const call = new RegExp(`\\b${name}\\s*\\(`);
  return [...lines.values()].filter(({ text }) => call.test(text)).slice(0, 12);
}

function sourceSentence({ source, examples }: TradeFunction): string {
  const from = `Source: ${source}.`;
  return examples.length === 0
    ? from
    : `${from} The examples above are worked again by machine whenever the program is made.`;
}
