import type { CautionEntry } from './caution.ts';
import { MEMORY, PRACTICE } from './sources.ts';

/** What the survey found, or nobody asked, and is no limit of the place. */
export const surveyCautions = {
  noResidualCurrent: {
    about: 'residual-current device',
    says: 'No residual-current device protects the socket: plug nothing in before a licensed electrician has looked at it.',
    decides: 'Qualified electrician',
    source: MEMORY,
    against: ['electricity near water'],
    onQuote: true,
  },
  residualCurrentNotAsked: {
    about: 'residual-current device',
    says: 'Nobody has asked for a residual-current device: ask before anything is plugged in.',
    decides: 'Qualified electrician',
    source: MEMORY,
    against: ['electricity near water'],
    onQuote: true,
  },
  noSocketNear: {
    about: 'socket',
    says: 'No socket is within reach: have one set before the tank comes; no extension lead lies near water or mist.',
    decides: 'Qualified electrician',
    source: PRACTICE,
    against: ['electricity near water'],
    onQuote: true,
  },
  heaterNear: {
    about: 'heater or vent',
    says: 'A heater or vent is near: the figure of the hottest day knows nothing of it. Read the temperature there with it on, or choose another place.',
    decides: "Client's named person, vet",
    source: MEMORY,
    against: ['animals', 'heat'],
    onQuote: true,
  },
} as const satisfies Readonly<Record<string, CautionEntry>>;
