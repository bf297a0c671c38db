import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/**
 * Files of the page: what its code calls for of its styles must be there, and the other way round. A class belongs to
 * one module; a plain style sheet is about elements alone.
 */
export function styleFaults(root: string): readonly string[] {
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => !/^dist\b/.test(file));
  const read = (file: string) => readFileSync(path.join(root, file), 'utf8');
  const styles = new Map(files.filter((file) => file.endsWith('.css')).map((file) => [file, withoutNotes(read(file))]));
  const code = files.filter((file) => /\.tsx?$/.test(file)).map((file) => ({ file, text: read(file) }));
  return [
    ...code.flatMap((each) => codeFaults(each, { root, styles })),
    ...globalIn(styles),
    ...unusedIn(styles, code),
  ];
}

interface Code {
  readonly file: string;
  readonly text: string;
}

interface Page {
  readonly root: string;
  readonly styles: ReadonlyMap<string, string>;
}

function codeFaults({ file, text }: Code, { root, styles }: Page): readonly string[] {
  const faults = writtenOut(text).map((name) => `${file}: ${name} is the class of no module`);
  for (const [, as, from = ''] of text.matchAll(/import (?:(\w+) from )?'([.#][^']*\.css)';/g)) {
    const target = from.startsWith('#renderer/')
      ? from.slice('#renderer/'.length)
      : path.join(path.dirname(file), from);
    if (!existsSync(path.join(root, target))) faults.push(`${file}: there is no ${target}`);
    if (as === undefined) continue;
    const known = new Set(classesIn(styles.get(target) ?? ''));
    for (const [, name = ''] of text.matchAll(new RegExp(String.raw`\b${as}\['(\w+)'\]`, 'g'))) {
      if (!known.has(name)) faults.push(`${file}: no class ${name} in ${target}`);
    }
  }
  return faults;
}

/** Classes that the code writes as a text instead of taking them from a module. */
function writtenOut(text: string): readonly string[] {
  const plain = text.matchAll(/\bclass(?:Name = '|=")([^'"]+)['"]/g);
  const added = text.matchAll(/\bclassList\.\w+\('([^']+)'/g);
  const chosen = [...text.matchAll(/\bclass=\{(.*)/g)].flatMap(([, rest = '']) => {
    const [own = ''] = rest.split(/\}(?:\s+[a-z-]+=|\s*\/?>)/);
    return [...own.matchAll(/[?:] '([^']+)'/g)];
  });
  return [...plain, ...added, ...chosen].map(([, name = '']) => name).filter((name) => !name.startsWith('ag-'));
}

/** Classes of the grid's library alone are global; a module names them to change their look. */
function globalIn(styles: Page['styles']): readonly string[] {
  return [...styles].flatMap(([file, text]) =>
    classesIn(file.endsWith('.module.css') ? globals(text) : text)
      .filter((name) => !name.startsWith('ag-'))
      .map((name) => `${file}: the class ${name} is global`),
  );
}

function unusedIn(styles: Page['styles'], code: readonly Code[]): readonly string[] {
  return [...styles].flatMap(([file, text]) => {
    if (!file.endsWith('.module.css')) return [];
    const users = code.filter((each) => each.text.includes(path.basename(file))).map((each) => each.text);
    const names = new Set(classesIn(text.replaceAll(/:global\([^)]*\)/g, '').replaceAll(/\{[^{}]*\}/g, '{}')));
    return [...names]
      .filter((name) => !users.some((each) => each.includes(`'${name}'`)))
      .map((name) => `${file}: nothing wears the class ${name}`);
  });
}

function classesIn(css: string): readonly string[] {
  return [...css.matchAll(/\.([a-zA-Z][\w-]*)/g)].map(([, name = '']) => name);
}

function globals(css: string): string {
  return [...css.matchAll(/:global\(([^)]*)\)/g)].map(([, of = '']) => of).join(' ');
}

function withoutNotes(css: string): string {
  return css.replaceAll(/\/\*[\s\S]*?\*\//g, '');
}
