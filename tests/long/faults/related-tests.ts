import { existsSync, globSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** Largest number of imports between a test and the source. */
const steps = 6;
/** Tests of the whole program, the gates and the slow tests are excluded: they would take minutes a fault. */
const slow = /^tests\/(?:browser|long|gates|bench|faults)\//u;

/** Finds the tests that import a source directly or through a few files, nearest first. */
export function relatedTests(root: string): (source: string) => string[] {
  const importers = readImporters(root);
  return (source) => {
    const seen = new Set([source]);
    let reached = [source];
    for (let step = 0; step < steps && reached.length > 0; step += 1) {
      reached = reached.flatMap((each) => importers.get(each) ?? []).filter((each) => !seen.has(each));
      for (const each of reached) seen.add(each);
    }
    return [...seen].filter((each) => /\.test\.tsx?$/u.test(each) && !slow.test(each));
  };
}

/** For each file, the files that import it. */
function readImporters(root: string): Map<string, string[]> {
  const importers = new Map<string, string[]>();
  const files = globSync('{shared-calc,electron,renderer,tests}/**/*.{ts,tsx,html}', { cwd: root });
  for (const file of files.filter((each) => !each.includes('/dist/')).toSorted())
    for (const named of namedFiles(root, file)) importers.set(named, [...(importers.get(named) ?? []), file]);
  return importers;
}

function namedFiles(root: string, file: string): Set<string> {
  const text = readFileSync(path.join(root, file), 'utf8');
  const names = [...text.matchAll(/['"](?<name>[#./\w-]+\.(?:tsx?|html|js))['"]/gu)].map(
    (each) => each.groups?.['name'] ?? '',
  );
  const paths = names.flatMap((name) => {
    if (name.startsWith('#')) return [name.slice(1)];
    return [path.join(path.dirname(file), name), name];
  });
  return new Set(paths.filter((each) => each !== file && existsSync(path.join(root, each))));
}
