/** Help as plain HTML, one page a function, made from the registry. */
import { type Answer, isCellError } from '../functions/calling/cell.ts';
import { formulaText, syntaxText } from '../functions/calling/formula-text.ts';
import { TOPICS, type WorksheetFunction } from '../functions/define.ts';
import { functions } from '../functions/index.ts';
import { escaped, page } from './html.ts';
import { helpFile } from './metadata.ts';

const TAKES = { cells: 'one value, or a range with one result a cell', range: 'a range', one: 'one value' };

const link = (id: string): string => `<a href="${helpFile(id)}">${escaped(id)}</a>`;

const cell = (value: unknown): string => escaped(isCellError(value) ? value.code : String(value));

const result = (value: Answer): string =>
  Array.isArray(value)
    ? `<table>${value
        .slice(0, 12)
        .map((row) => `<tr>${row.map((one) => `<td>${cell(one)}</td>`).join('')}</tr>`)
        .join('')}</table>`
    : `<p>gives <strong>${cell(value)}</strong></p>`;

const argumentRows = (f: WorksheetFunction): string =>
  f.arguments
    .map(
      (a) =>
        `<tr><th scope="row">${escaped(a.name)}</th><td>${escaped(a.description)}</td><td>${TAKES[a.takes]}</td><td>${a.optional ? 'may be left out' : 'required'}</td></tr>`,
    )
    .join('');

const list = (items: readonly string[]): string =>
  items.length ? `<ul>${items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul>` : '';

const HEADER = '<header><nav aria-label="Help"><a href="index.html">All functions</a></nav></header>';

/** One help page. */
export const helpPage = (f: WorksheetFunction): string =>
  page(
    `JACKET.${f.id}`,
    `${HEADER}
<main>
<h1>${escaped(f.question)}</h1>
<p>${escaped(f.description)}</p>
<pre><code>=${escaped(syntaxText(f.id, f.arguments))}</code></pre>
${
  f.hurts
    ? '<div class="caution"><p>An estimate for planning. Follow your local codes and the maker’s data sheet, and leave what needs a licence to those who hold one.</p></div>'
    : ''
}
${f.arguments.length ? `<h2>What to give</h2><table><thead><tr><th scope="col">argument</th><th scope="col">what it is</th><th scope="col">takes</th><th scope="col">needed</th></tr></thead><tbody>${argumentRows(f)}</tbody></table>` : ''}
<h2>What comes back</h2>
<p>${escaped(f.result.what)}</p>
<h2>How it is calculated</h2>
<p>${escaped(f.equation)}</p>
<h2>Where it comes from</h2>
<p>${escaped(f.basis)}: ${escaped(f.source)}.</p>
${f.remarks?.length ? `<h2>Good to know</h2>${list(f.remarks)}` : ''}
${f.limits.length ? `<h2>Limits</h2>${list(f.limits.map(({ text }) => text))}` : ''}
<h2>Examples</h2>
${f.examples.map((e) => `<pre><code>${escaped(formulaText(f.id, e.args))}</code></pre>${result(f.call(e.args))}`).join('\n')}
${f.related?.length ? `<h2>Related</h2><p class="related">${f.related.map(link).join(' · ')}</p>` : ''}
</main>`,
  );

/** The list of all functions by topic. */
export const helpIndex = (): string =>
  page(
    'Functions for storage jackets',
    `<main>
<h1>Functions for storage jackets</h1>
${TOPICS.map((topic) => {
  const here = functions.filter((f) => f.topic === topic);
  return here.length
    ? `<h2>${topic[0]!.toUpperCase()}${topic.slice(1)}</h2><dl>${here.map((f) => `<dt>${link(f.id)}</dt><dd>${escaped(f.description)}</dd>`).join('')}</dl>`
    : '';
}).join('\n')}
</main>`,
  );

/** All help files by name. */
export const helpFiles = (): Map<string, string> =>
  new Map([['index.html', helpIndex()], ...functions.map((f): [string, string] => [helpFile(f.id), helpPage(f)])]);
