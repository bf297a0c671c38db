import { sayCaution, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { peopleCaution, peopleQuestions } from '#shared-calc/cautions/people-near.ts';
import { markWords } from '#shared-calc/bench/source-words.ts';
import type { Decides } from '#shared-calc/cautions/deciders.ts';
import type { SizeAnimals } from '#shared-calc/recipe/column.ts';
import type { AnimalKind, Job } from '#shared-calc/records/records.ts';

/** People near the tank whom its animals may make ill, as asked; a question that nobody asked stands here too. */
export function peopleNear({ survey }: Pick<Job, 'survey'>): readonly SaidCaution[] {
  return peopleQuestions.flatMap((question) => {
    const id = peopleCaution(survey, question);
    return id ? [sayCaution(id)] : [];
  });
}

/** Reminders of legal protection: they name who to ask, and never predict the answer. */
export function protectedKinds(animals: readonly SizeAnimals[]): readonly SaidCaution[] {
  const papers = kindsOf(animals).flatMap((kind) => ofKind(kind, kind.permits, 'Wildlife authority'));
  return [...papers, sayCaution('askAuthority')];
}

/** What the kinds of animal can do to people. */
export function harmOf(animals: readonly SizeAnimals[]): readonly SaidCaution[] {
  return kindsOf(animals).flatMap((kind) => ofKind(kind, kind.harmToPeople, 'Public-health office'));
}

function kindsOf(animals: readonly SizeAnimals[]): readonly AnimalKind[] {
  return [...new Set(animals.flatMap(({ kind, count }) => (kind && count !== 0 ? [kind] : [])))];
}

function ofKind(
  { label, source, sourceNote = '' }: AnimalKind,
  words: string,
  decides: Decides,
): readonly SaidCaution[] {
  if (words.trim() === '') return [];
  const from = [markWords(source), sourceNote].filter((part) => part !== '').join(', ');
  return [{ id: null, about: label, says: `${label}: ${words.trim()}`, decides, source: from }];
}
