import { signal, type Signal } from '@preact/signals';
import { storedNumber, type StoredNumber } from '#renderer/store/stored-number.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { noTreatment, type TreatmentTexts } from './treatment-texts.ts';

/** State of the prep plan view while the page is open. */
export interface PrepareState {
  readonly api: JobApi;
  /** Hours that one builder works a day, and number of tanks the workshop has room for at once. */
  readonly hoursADay: Signal<number>;
  readonly places: Signal<number>;
  /** The last requested treatment, so that it can be printed. */
  readonly treatment: Signal<TreatmentTexts>;
  /** The tank that lessons are compared on; the job's first by default. */
  readonly reference: Signal<string | undefined>;
  readonly keep: (what: 'hoursADay' | 'places', value: number) => void;
}

const USUAL_HOURS = 8;
const USUAL_PLACES = 4;

export function openPrepareState(api: JobApi, page: Window): PrepareState {
  const stored: Readonly<Record<'hoursADay' | 'places', StoredNumber>> = {
    hoursADay: storedNumber(page, 'hours a day', USUAL_HOURS),
    places: storedNumber(page, 'places for tanks', USUAL_PLACES),
  };
  const chosen = { hoursADay: signal(stored.hoursADay.read()), places: signal(stored.places.read()) };
  return {
    api,
    ...chosen,
    treatment: signal(noTreatment),
    reference: signal(undefined),
    keep: (what, value) => {
      chosen[what].value = value;
      stored[what].write(value);
    },
  };
}
