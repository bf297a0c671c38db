import { signal } from '@preact/signals';
import { contextNow, type BookApi } from '#renderer/books/book-api.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { functionList } from './function-list.ts';
import { FunctionLeaf } from './function-leaf.tsx';
import { findFunction, functionGroups } from './function-words.ts';
import { exampleTexts } from './try-function.ts';
import { TryBox } from './try-box.tsx';
import css from './function-book.module.css';

/** Every trade function: its purpose, its arguments, its source, and a form to try it. */
export function functionBookPlace(api: BookApi): (route: Route) => PlaceView {
  const written = signal<{ readonly name: string; readonly texts: readonly string[] }>({ name: '', texts: [] });
  return ({ rest }) => {
    const context = contextNow(api);
    const entry = findFunction(rest[0] ?? '') ?? tradeFunctions[0];
    if (!entry) return { about: '', aside: '', acts: [], work: null };
    const texts = written.value.name === entry.name ? written.value.texts : exampleTexts(entry, context.display);
    const write = (next: readonly string[]) => (written.value = { name: entry.name, texts: next });
    const tryExample = (rule: string) =>
      write(exampleTexts({ ...entry, examples: [{ rule, gives: '' }] }, context.display));
    return {
      about: '',
      aside: 'what each function is for, and how we know it is right',
      acts: [],
      work: (
        <div class={css['openBook']}>
          <Contents here={entry} />
          <FunctionLeaf key={entry.name} entry={entry} context={context} tryExample={tryExample} />
        </div>
      ),
      // A function that was asked for is printed as it is shown; else the whole book is.
      ...(rest[0] === undefined && { printed: () => functionList(context.workshop) }),
      sidePanel: (
        <TryBox key={entry.name} entry={entry} texts={texts} write={write} display={context.display} say={api.say} />
      ),
      find: {
        label: 'Find a function',
        placeholder: 'Find a function',
        options: tradeFunctions.map(({ name, title }) => (name.includes('_') ? name : title)),
        go: (words) => {
          const found = findFunction(words);
          if (found) location.hash = writeRoute('function-book', found.name);
          return found !== undefined;
        },
      },
    };
  };
}

const groups = functionGroups();

function Contents({ here }: { readonly here: TradeFunction }) {
  return (
    <nav class={css['contents']} aria-label="Functions">
      {groups.map(({ title, functions }) => (
        <section key={title}>
          <h2>{title}</h2>
          <ul>
            {functions.map(({ name, title: words, inRules }) => (
              <li key={name}>
                <a
                  class={inRules ? undefined : css['inWords']}
                  href={writeRoute('function-book', name)}
                  aria-current={name === here.name ? 'page' : undefined}
                >
                  {inRules ? name : words}
                </a>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}
