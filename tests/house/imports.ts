import { readFileSync } from 'node:fs';
import { parseSync, Visitor } from 'vite';

/** One import in a file, of any form: statement, re-export, `import()` or a type's `import()`. */
export interface Import {
  /** What is imported, as it is written; `(computed)` when it is not a plain text. */
  readonly from: string;
  /** Gone after compiling, because only types are taken. */
  readonly typeOnly: boolean;
  /** Loaded when the code gets there, and not with the file. */
  readonly later: boolean;
}

/** Every import in a TypeScript or JavaScript file. Throws when the file cannot be parsed. */
export function importsIn(file: string, text = readFileSync(file, 'utf8')): Import[] {
  const { program, module, errors } = parseSync(file, text);
  if (errors.length > 0) throw new Error(`${file}: ${errors.map((one) => one.message).join('; ')}`);
  const found: Import[] = [];
  for (const { moduleRequest, entries } of module.staticImports) {
    const typeOnly = entries.length > 0 && entries.every((one) => one.isType);
    found.push({ from: moduleRequest.value, typeOnly, later: false });
  }
  for (const { entries } of module.staticExports) {
    const from = entries.find((one) => one.moduleRequest)?.moduleRequest?.value;
    if (from) found.push({ from, typeOnly: entries.every((one) => one.isType), later: false });
  }
  for (const { moduleRequest } of module.dynamicImports) {
    const written = text.slice(moduleRequest.start, moduleRequest.end);
    const plain = /^(['"`])([^$]*)\1$/.exec(written)?.[2];
    found.push({ from: plain ?? '(computed)', typeOnly: false, later: true });
  }
  new Visitor({
    TSImportType: (node) => {
      found.push({ from: node.source.value, typeOnly: true, later: false });
    },
  }).visit(program);
  return found;
}
