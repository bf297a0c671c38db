import { z } from 'zod';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import { emptyRecords, type RecordKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { type DemoFault, listFiles, ownFolder, readDemo, readFile } from './read-demo.ts';
import { StoryStep, tellStory, type Told } from './tell-story.ts';

/** The story has its own jobs; the workshop is the same. */
const leftOut: readonly RecordKind[] = ['job', 'size', 'localValue'];

/** The demo workshop on the first day of its story, and what has happened there until today. */
export function readFullDemo(today: Day, folder: string = ownFolder): Result<Told, DemoFault> {
  const steps = readStory(folder);
  if (!steps.ok) return steps;
  const first = addDays(today, Math.min(0, ...steps.value.map(({ day }) => day)));
  const workshop = readDemo(first, folder);
  if (!workshop.ok) return workshop;
  const added = workshop.value.filter(({ kind }) => !leftOut.includes(kind));
  return ok(tellStory(applyChange(emptyRecords, { ...emptyChange(''), added }), steps.value, today));
}

const Steps = z.array(StoryStep);

function readStory(folder: string): Result<readonly StoryStep[], DemoFault> {
  const files = listFiles(folder, 'full');
  if (!files.ok) return files;
  const parts = files.value.map((file) =>
    readFile(folder, file, (data) => {
      const steps = Steps.safeParse(data);
      return steps.success ? ok(steps.data) : failed(z.prettifyError(steps.error));
    }),
  );
  const fault = parts.find((part) => !part.ok);
  return fault ?? ok(parts.flatMap((part) => (part.ok ? part.value : [])));
}
