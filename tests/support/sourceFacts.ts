import { parseSync } from 'vite';

/** One import of a file, of whatever sort: static, dynamic, type-only, re-export or the address of a worker. */
export interface Import {
  /** As written; undefined when it is put together at run time. */
  readonly from: string | undefined;
  /** An address that is put together with `import.meta.url`, of a worker or a folder, not code that is brought in. */
  readonly address: boolean;
  readonly line: number;
}

/** What the rules need to know of one source file. */
export interface SourceFacts {
  readonly imports: readonly Import[];
  /** Uses of the surroundings, such as `document`, `Date.now` or `new Date()`. */
  readonly globals: readonly { readonly name: string; readonly line: number }[];
  /** Lines that hold more than blanks and comments. */
  readonly codeLines: number;
  readonly onlyReexports: boolean;
  /** Lines of `/// <reference ...>` comments, which could bring the DOM's types back. */
  readonly references: readonly number[];
  /** Message of the first syntax error. */
  readonly syntaxError: string | undefined;
}

type Node = Readonly<Record<string, unknown>> & { readonly type: string; readonly start: number };

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

/** Reads one file with the bundler's own parser, so that text in comments, strings and JSX can't mislead. */
export function readSource(path: string, text: string): SourceFacts {
  const { program, comments, errors } = parseSync(path, text);
  const lineOf = (offset: number) => text.slice(0, offset).split('\n').length;
  const top: unknown = program;
  const nodes = isNode(top) ? [...walk(top)] : [];
  const bound = new Set(nodes.flatMap(boundNames));
  const imports = nodes.flatMap((node) =>
    importsOf(node).map((from) => ({
      from,
      address: node.type === 'NewExpression',
      line: lineOf(node.start),
    })),
  );
  const globals = nodes.flatMap((node) => {
    const name = globalOf(node, bound);
    return name === undefined ? [] : [{ name, line: lineOf(node.start) }];
  });
  return {
    imports,
    globals,
    codeLines: codeLines(text, comments),
    onlyReexports: onlyReexports(program.body),
    references: comments
      .filter(({ value }) => /^\/\s*<reference/.test(value))
      .map(({ start }) => lineOf(start)),
    syntaxError: errors[0]?.message,
  };
}

/** Keys under which a plain name is only a label, not a use of what it names. */
const labels: Readonly<Record<string, string>> = {
  MemberExpression: 'property',
  Property: 'key',
  MethodDefinition: 'key',
  PropertyDefinition: 'key',
  TSPropertySignature: 'key',
  TSMethodSignature: 'key',
  TSQualifiedName: 'right',
};

function* walk(node: Node): Generator<Node> {
  yield node;
  const label = node.computed === true ? undefined : labels[node.type];
  for (const [key, value] of Object.entries(node)) {
    if (key === label) continue;
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child)) yield* walk(child);
    }
  }
}

/** The text of a literal, or of a template without gaps. */
function literalText(node: unknown): string | undefined {
  if (!isNode(node)) return undefined;
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type !== 'TemplateLiteral' || !Array.isArray(node.quasis) || node.quasis.length !== 1) {
    return undefined;
  }
  const cooked: unknown = node.quasis[0]?.value?.cooked;
  return typeof cooked === 'string' ? cooked : undefined;
}

const nameOf = (node: unknown): string | undefined =>
  isNode(node) && node.type === 'Identifier' && typeof node.name === 'string'
    ? node.name
    : undefined;

const isImportMeta = (node: unknown): boolean => isNode(node) && node.type === 'MetaProperty';

/** The member that is asked for, `a.b` and `a['b']` alike. */
function memberName(node: Node): string | undefined {
  return node.computed === true ? literalText(node.property) : nameOf(node.property);
}

const sourceNodes = new Set([
  'ImportDeclaration',
  'ExportAllDeclaration',
  'ExportNamedDeclaration',
  'ImportExpression',
  'TSImportType',
]);

function importsOf(node: Node): (string | undefined)[] {
  if (sourceNodes.has(node.type)) return isNode(node.source) ? [literalText(node.source)] : [];
  if (node.type === 'TSExternalModuleReference') return [literalText(node.expression)];
  const given: readonly unknown[] = Array.isArray(node.arguments) ? node.arguments : [];
  if (node.type === 'NewExpression' && nameOf(node.callee) === 'URL') {
    const base = given[1];
    const fromHere = isNode(base) && base.type === 'MemberExpression' && isImportMeta(base.object);
    return fromHere ? [literalText(given[0])] : [];
  }
  if (node.type !== 'CallExpression') return [];
  if (nameOf(node.callee) === 'require') return [literalText(given[0])];
  const glob =
    isNode(node.callee) && node.callee.type === 'MemberExpression' ? node.callee : undefined;
  return glob !== undefined && isImportMeta(glob.object) && memberName(glob) === 'glob'
    ? [undefined]
    : [];
}

const surroundings = new Set(
  `alert cancelAnimationFrame clearInterval clearTimeout console crypto document fetch global globalThis indexedDB
  localStorage location navigator performance process queueMicrotask requestAnimationFrame self sessionStorage
  setImmediate setInterval setTimeout window XMLHttpRequest`.split(/\s+/),
);
const unsteadyMembers = new Set(['Date.now', 'Math.random']);

function globalOf(node: Node, bound: ReadonlySet<string>): string | undefined {
  const name = nameOf(node);
  if (name !== undefined) return surroundings.has(name) && !bound.has(name) ? name : undefined;
  if (node.type === 'MemberExpression') {
    const full = `${nameOf(node.object)}.${memberName(node)}`;
    return unsteadyMembers.has(full) ? full : undefined;
  }
  if (node.type === 'VariableDeclarator') return takenApart(node);
  const now = nameOf(node.callee) === 'Date' && !bound.has('Date');
  if (node.type === 'CallExpression' && now) return 'Date()';
  const bare = Array.isArray(node.arguments) && node.arguments.length === 0;
  return node.type === 'NewExpression' && now && bare ? 'new Date()' : undefined;
}

/** `const { random } = Math` is as unsteady as `Math.random`. */
function takenApart({ id, init }: Node): string | undefined {
  const object = nameOf(init);
  if (!isNode(id) || id.type !== 'ObjectPattern' || !Array.isArray(id.properties)) return undefined;
  return id.properties
    .map((property: unknown) => (isNode(property) ? `${object}.${nameOf(property.key)}` : ''))
    .find((full) => unsteadyMembers.has(full));
}

/** Names that a node brings into being, for instance a parameter called `document`. */
function boundNames(node: Node): string[] {
  if (node.type === 'VariableDeclarator') return patternNames(node.id);
  if (node.type === 'CatchClause') return patternNames(node.param);
  if (node.type.startsWith('Import') && isNode(node.local)) return patternNames(node.local);
  const parameters: readonly unknown[] = Array.isArray(node.params) ? node.params : [];
  const declared = /^(Function|Class)Declaration$/.test(node.type) ? [node.id] : [];
  return [...parameters, ...declared].flatMap(patternNames);
}

function patternNames(pattern: unknown): string[] {
  if (!isNode(pattern)) return [];
  const name = nameOf(pattern);
  if (name !== undefined) return [name];
  if (pattern.type === 'AssignmentPattern') return patternNames(pattern.left);
  if (pattern.type === 'RestElement') return patternNames(pattern.argument);
  if (pattern.type === 'Property') return patternNames(pattern.value);
  const parts = pattern.type === 'ObjectPattern' ? pattern.properties : pattern.elements;
  return Array.isArray(parts) ? parts.flatMap(patternNames) : [];
}

function codeLines(text: string, comments: readonly { start: number; end: number }[]): number {
  let bare = text;
  for (const { start, end } of comments) {
    const blank = text.slice(start, end).replace(/[^\n]/g, ' ');
    bare = bare.slice(0, start) + blank + bare.slice(end);
  }
  return bare.split('\n').filter((line) => line.trim() !== '').length;
}

function onlyReexports(body: readonly unknown[]): boolean {
  const statements = body.filter(isNode);
  const isReexport = ({ type, source, declaration }: Node) =>
    type === 'ExportAllDeclaration' ||
    (type === 'ExportNamedDeclaration' && (isNode(source) || !isNode(declaration)));
  return (
    statements.some(isReexport) &&
    statements.every((node) => node.type === 'ImportDeclaration' || isReexport(node))
  );
}
