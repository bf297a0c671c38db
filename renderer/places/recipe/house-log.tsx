import type { BookStore } from '#renderer/store/book-store.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { changesOf } from '#shared-calc/jobs/house-changes.ts';
import { changeWords } from '#shared-calc/papers/house-said.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { HouseChange } from '#shared-calc/records/records.ts';

interface LogParts {
  readonly book: BookStore;
  readonly recipe: string;
}

/** Nobody reads more of them in a side panel; all of them are on the command line. */
const MOST = 20;

/** The dated log of a recipe, the last first, with proposals to put in force or to drop. */
export function HouseLog({ book, recipe }: LogParts) {
  const changes = changesOf(book.records.value, recipe).toReversed();
  if (changes.length === 0) return null;
  return (
    <section>
      <h3>Changes of the house</h3>
      <ul>
        {changes.slice(0, MOST).map((change) => (
          <li key={change.id}>
            <Entry change={change} book={book} />
          </li>
        ))}
      </ul>
      {changes.length > MOST && <MutedLine>and {changes.length - MOST} before</MutedLine>}
    </section>
  );
}

function Entry({ change, book }: Pick<LogParts, 'book'> & { readonly change: HouseChange }) {
  const { id, on, inForceOn, note, fromJob, answers } = change;
  const { display } = book.derived.value;
  const from = fromJob === undefined ? '' : `, from ${fromJob}`;
  return (
    <>
      <b>{id}</b> {changeWords(change, display)},{' '}
      {inForceOn === undefined ? `proposed ${paperDay(on, display)}` : `in force ${paperDay(inForceOn, display)}`}
      {from}
      {note !== '' && <MutedLine>{note}</MutedLine>}
      {answers.map(({ job, answer, on: day, by }) => (
        <MutedLine key={job}>
          {job} {answer === 'take' ? 'took' : 'left'} it {paperDay(day, display)}, {by}
        </MutedLine>
      ))}
      {inForceOn === undefined && (
        <Buttons>
          <Button onClick={() => void book.doAct('forceHouse', { change: id })}>Put {id} in force</Button>
          <Button onClick={() => void book.doAct('dropHouse', { change: id })}>Drop {id}</Button>
        </Buttons>
      )}
    </>
  );
}
