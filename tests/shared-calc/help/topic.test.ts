import { describe, expect, test } from 'vitest';
import { helpSpans } from '#shared-calc/help/help-text.ts';
import { searchHelp } from '#shared-calc/help/search-help.ts';
import { sayTopic } from '#shared-calc/help/say-topic.ts';
import { topicOf, topics, type Topic } from '#shared-calc/help/topic.ts';
import { places } from '#shared-calc/contract/places.ts';

/** Every text of a topic. */
function textsOf(topic: Topic): readonly string[] {
  if (topic.is === 'word') return [topic.word.says];
  if (topic.is === 'guide') return topic.says;
  return [topic.help.what, ...topic.help.acts.map(({ does }) => does)];
}

describe('topics', () => {
  test('no two have the same name in a link', () => {
    const ids = topics.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
  });

  test('every link leads to a topic', () => {
    const links = topics.flatMap((topic) =>
      textsOf(topic).flatMap((text) =>
        helpSpans(text, (id) => id).flatMap((span) => (span.is === 'link' ? span.to : [])),
      ),
    );
    expect(links.length).toBeGreaterThan(20);
    expect(links.filter((id) => topicOf(id) === undefined)).toEqual([]);
  });

  test('every word is explained where some place uses it, or in another word', () => {
    const used = new Set(
      topics.flatMap((topic) => [
        ...(topic.is === 'place' ? topic.help.words : []),
        ...textsOf(topic).flatMap((text) =>
          helpSpans(text, (id) => id).flatMap((span) => (span.is === 'link' ? span.to : [])),
        ),
      ]),
    );
    expect(topics.filter(({ is, id }) => is === 'word' && !used.has(id)).map(({ id }) => id)).toEqual([]);
  });

  test('a text reads as sentences, without marks left over', () => {
    for (const topic of topics) expect(sayTopic(topic).join('\n')).not.toMatch(/[{}*|]/);
    for (const topic of topics)
      for (const text of [...textsOf(topic)].slice(0, topic.is === 'place' ? 1 : undefined))
        expect(text).toMatch(/\.$/);
  });

  test('what a place is for, its three acts and its words are told', () => {
    for (const { id, title } of places) expect(sayTopic(topicOf(id) ?? fail())[0]).toBe(title);
    expect(sayTopic(topicOf('store') ?? fail()).slice(0, 7)).toEqual([
      'Store',
      '',
      'What lies in the workshop: on hand, in quarantine, kept for jobs, on its way.',
      '',
      'Put in: writes down goods that came, and what they cost.',
      'Keep for a job: gives a job a claim on them.',
      'Count it: corrects what the store thinks, with the reason.',
    ]);
  });
});

describe('searchHelp', () => {
  test.each([
    ['dam', 'topic dam'],
    ['send to house', 'topic send-to-house'],
    ['Layer volume', 'function layer_volume'],
    ['layer_volume', 'function layer_volume'],
    ['undo', 'topic undo-and-saving'],
    ['F8', 'key F8'],
    ['store', 'topic store'],
  ])('%s finds %s first', (typed, first) => {
    expect(named(searchHelp(typed)[0])).toBe(first);
  });

  test('words may be anywhere in what is said, and all must be there', () => {
    expect(searchHelp('fifth bag').map(named)).toEqual(['topic used-cost']);
    expect(searchHelp('fifth bag zorp')).toEqual([]);
    expect(searchHelp('  ')).toEqual([]);
  });
});

function named(hit: ReturnType<typeof searchHelp>[number] | undefined): string {
  if (hit === undefined) return 'nothing';
  if (hit.is === 'topic') return `topic ${hit.topic.id}`;
  return hit.is === 'function' ? `function ${hit.name}` : `key ${hit.keys}`;
}

function fail(): never {
  throw new Error('no such topic');
}
