import fc from 'fast-check';

/* The laws of a tank's air, each over a hundred columns. */
fc.configureGlobal({ numRuns: 100 });
await import('#tests/scenarios/air-laws.test.ts');
