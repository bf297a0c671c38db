import type { Added } from '#shared-calc/records/change.ts';

export const sampleKind: Added = {
  kind: 'animalKind',
  record: {
    id: 'A1',
    label: 'Small bold frog',
    ceiling: 27,
    actFrom: 26,
    floor: 18,
    bandLow: 0.75,
    bandHigh: 0.95,
    groupLeast: 2,
    groupMost: 6,
    prey: 'C1',
    crushesPlants: false,
    harmToPeople: '',
    permits: 'Ask first.',
    quarantineDays: 60,
    source: 'practice',
    sourceNote: '',
    note: '',
    preyADay: 20,
    vents: 'small',
    marks: { floor: 'memory' },
  },
};

export const sampleBatch: Added = {
  kind: 'animalBatch',
  record: {
    id: 'AB-001',
    kind: 'A1',
    count: 6,
    cameOn: '2027-01-04',
    from: 'own',
    joinedOn: '2027-01-09',
    looks: [{ on: '2027-01-11', seen: 'all eat' }],
    tests: [{ which: 'droppings', on: '2027-01-20', result: 'clear' }],
    place: 'Back room',
    note: '',
  },
};

export const samplePlacement: Added = {
  kind: 'placement',
  record: {
    id: 'AP-001',
    batch: 'AB-001',
    size: 'J01-T07',
    count: 4,
    on: '2027-03-09',
    anyway: 'the vet agrees',
    who: 'R1',
  },
};
