import { useEffect, useState } from 'preact/hooks';
import type { BookInfo, Output } from '#shared-calc/contract/channels.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { FactList } from '#renderer/kit/fact-list.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import { SearchField } from '#renderer/kit/search-field.tsx';
import { printAct } from '#renderer/print/print-acts.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import { readLicences, type PackageLicence } from './read-licences.ts';
import css from './about.module.css';

type Api = Pick<BookStore, 'call' | 'info'>;

/** What the program is: version, licence, packages, and where its files are. */
export function aboutPlace(api: Api): () => PlaceView {
  return () => ({
    about: '',
    aside: '',
    acts: [printAct(window)],
    work: (
      <ScrollPage class={css['page']}>
        <About api={api} book={api.info.value} />
      </ScrollPage>
    ),
  });
}

interface AboutParts {
  readonly api: Api;
  readonly book: BookInfo;
}

function About({ api, book }: AboutParts) {
  const [program, setProgram] = useState<Output<'program.about'>>();
  const [own, setOwn] = useState<readonly PackageLicence[]>([]);
  useEffect(() => {
    void api.call('program.about', {}).then((told) => told.ok && setProgram(told.value));
    void fetch('.vite/license.md')
      .then((answer) => (answer.ok ? answer.text() : ''))
      .then((list) => setOwn(readLicences(list)));
  }, []);
  const format = program === undefined ? [] : [['Format of books', program.format] as const];
  const log = program?.log === undefined ? [] : [['Log of faults', program.log] as const];
  return (
    <>
      <section>
        <h2>Loamwright</h2>
        <FactList facts={[['Version', program?.version ?? ''], ['Open book', book.path], ...format, ...log]} />
      </section>
      <section>
        <h2>Licence</h2>
        <p>
          Loamwright is free software under the GNU General Public License, version 3 only: you may use it, look into
          it, change it and hand it on. It comes without any warranty. Its text is in the file LICENSE that comes with
          the program. It works without a network and sends nothing anywhere.
        </p>
      </section>
      <Packages packages={[...own, ...(program?.packages ?? [])]} />
    </>
  );
}

function Packages({ packages }: { readonly packages: readonly PackageLicence[] }) {
  const [typed, type] = useState('');
  const shown = packages
    .filter(({ name }) => name.toLowerCase().includes(typed.trim().toLowerCase()))
    .toSorted((one, other) => one.name.localeCompare(other.name, 'en'));
  return (
    <section>
      <h2>Packages it is built of</h2>
      <SearchField label="Find a package" text={typed} typing={type} />
      <ul class={css['packages']}>
        {shown.map(({ name, version, licence, text }) => (
          <li key={name}>
            {text === undefined ? (
              `${name} ${version}, ${licence}`
            ) : (
              <details>
                <summary>{`${name} ${version}, ${licence}`}</summary>
                <pre tabIndex={0}>{text}</pre>
              </details>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
