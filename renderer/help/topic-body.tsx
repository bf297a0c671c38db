import { writeRoute } from '#renderer/frame/place-route.ts';
import { Button } from '#renderer/kit/button.tsx';
import { Link } from '#renderer/kit/link.tsx';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import { helpSpans } from '#shared-calc/help/help-text.ts';
import { keyGroups } from '#shared-calc/help/key-groups.ts';
import type { PlaceHelp } from '#shared-calc/help/place-help.ts';
import { mainActName } from '#shared-calc/help/say-topic.ts';
import { topicOf, type Topic } from '#shared-calc/help/topic.ts';
import type { Word } from '#shared-calc/help/word.ts';
import { wordTable } from '#shared-calc/help/word-table.ts';
import { HelpPicture } from './help-picture.tsx';
import { Keys } from './key-list.tsx';
import css from './help-panel.module.css';

interface Shown {
  readonly show: (topic: string) => void;
}

/** What a topic says, with links to the topics it speaks of. */
export function TopicBody({ topic, show }: Shown & { readonly topic: Topic }) {
  if (topic.is === 'guide') {
    return (
      <>
        {topic.says.map((says) => (
          <p key={says}>
            <HelpWords text={says} show={show} />
          </p>
        ))}
      </>
    );
  }
  if (topic.is === 'word') return <WordBody word={topic.word} show={show} />;
  return <PlaceBody id={topic.id} help={topic.help} show={show} />;
}

function HelpWords({ text, show }: Shown & { readonly text: string }) {
  return (
    <>
      {helpSpans(text, (id) => topicOf(id)?.title ?? id).map((span, at) => {
        if (span.is === 'text') return span.words;
        if (span.is === 'act') return <b key={at}>{span.words}</b>;
        return (
          <Button key={at} look="plain" onClick={() => show(span.to)}>
            {span.words}
          </Button>
        );
      })}
    </>
  );
}

function WordBody({ word, show }: Shown & { readonly word: Word }) {
  return (
    <>
      <p>
        <HelpWords text={word.says} show={show} />
      </p>
      {word.picture && <HelpPicture name={word.picture} />}
    </>
  );
}

const inGrids: readonly string[] = [
  'bench',
  'recipe',
  'prices',
  'measures',
  'tank-book',
  'material-book',
  'plant-book',
  'culture-book',
  'animal-book',
  'rate-book',
] satisfies readonly PlaceId[];

function PlaceBody({ id, help, show }: Shown & { readonly id: string; readonly help: PlaceHelp }) {
  const keys = keyGroups.filter(({ on }) => on === 'page' || inGrids.includes(id));
  return (
    <>
      <p>{help.what}</p>
      <h3>What is done here</h3>
      <ul class={css['acts']}>
        {help.acts.map((act) => (
          <li key={mainActName(act)}>
            <b>{mainActName(act)}</b>: {act.does}.
          </li>
        ))}
      </ul>
      <h3>Its words</h3>
      {help.words.map((word) => (
        <details key={word} class={css['word']}>
          <summary>{wordTable[word].word}</summary>
          <WordBody word={wordTable[word]} show={show} />
        </details>
      ))}
      <h3>Its keys</h3>
      {keys.map((group) => (
        <details key={group.title} class={css['word']}>
          <summary>{group.title}</summary>
          <Keys keys={group.keys} />
        </details>
      ))}
      <p>
        <Link href={writeRoute('keys')}>All keys</Link>
      </p>
    </>
  );
}
