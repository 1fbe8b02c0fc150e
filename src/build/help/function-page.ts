/** The page of one function. */
import { SETTINGS, type SettingKey } from '../../calculation/settings.ts';
import { sectionDrawing } from '../../drawing/section.ts';
import { guardOf, listed } from '../../functions/calling/arguments.ts';
import { isCellError } from '../../functions/calling/cell.ts';
import { DECIMAL_COMMA, syntaxText } from '../../functions/calling/formula-text.ts';
import type { NamedArgument, WorksheetFunction } from '../../functions/define.ts';
import { escaped } from '../html.ts';
import { block } from './caution-block.ts';
import { closed, functionLink, list, sentence } from './elements.ts';
import type { Page } from './frame.ts';
import { mathLines, mathml } from './math.ts';
import { helpFile, SETTINGS_FILE, settingAddress, topicFile } from './names.ts';
import { unitsOf } from './numbers.ts';
import { slips } from './slips.ts';
import { asksForUs } from './systems.ts';
import { TOPIC_TEXTS } from './topics.ts';
import { example } from './worked.ts';

const TAKES = {
  cells: 'one value, or a range with one result a cell',
  range: 'a range, read as one',
  one: 'one value',
};

/** What values an argument allows, in words. */
const allowed = ({ name, words, quantity, schema, takes, repeating }: NamedArgument): string => {
  if (name === 'settings' && !quantity) return '"metric", "us", or two columns of names and values';
  if (repeating) return 'the arguments of that function';
  if (words) return quantity ? '' : listed(words);
  if (!quantity) return takes === 'range' ? 'cells as they stand in your table' : 'text';
  if (takes === 'range') return 'numbers';
  try {
    const guard = guardOf(schema);
    return guard(-1) ? 'any number' : guard(0) ? 'a number, 0 or more' : 'a number above 0';
  } catch {
    return 'a number above 0, or a name';
  }
};

const argumentItem = (a: NamedArgument): string => {
  const isSettings = a.name === 'settings' && !a.quantity;
  const unit = unitsOf(a.quantity);
  const facts: [string, string][] = [
    ['unit', unit],
    ['takes', isSettings ? '' : a.repeating ? '' : TAKES[a.takes]],
    ['value', allowed(a)],
  ];
  return `<div class="argument"><dt><code>${escaped(a.name)}</code> <span class="need">${a.optional ? 'may be left out' : 'required'}</span></dt>
<dd>${isSettings ? `Your own defaults; see <a href="${SETTINGS_FILE}">all settings</a>.` : escaped(sentence(a.what))}
<ul class="facts">${facts
    .filter(([, text]) => text)
    .map(([what, text]) => `<li><span class="faint">${what}</span> ${escaped(text)}</li>`)
    .join('')}</ul></dd></div>`;
};

const resultText = (f: WorksheetFunction): string => {
  const { result } = f;
  const unit = result.kind === 'number' || result.kind === 'table' ? unitsOf(result.quantity) : '';
  const kind =
    result.kind === 'table'
      ? `A table that fills the cells beside and below${result.header ? ', with a row of names' : ', without a row of names'}: `
      : '';
  return `<p>${escaped(sentence(kind + result.what + (unit ? `, in ${unit}` : '')))}</p>`;
};

/** Functions that work out the section of the lower half. */
const WITH_SECTION: ReadonlySet<string> = new Set(['STRENGTH', 'SAFETY_FACTOR', 'RIB_HEIGHT', 'LAYERS_NEEDED']);

/** Narrow enough for a page of 320 px. */
const SKETCH_WIDTH = 280;

/** The sketch of the section with its letters, and what is on the safe side or left out. */
const sectionSketch = (id: string): string => {
  if (!WITH_SECTION.has(id)) return '';
  const { svg, table } = sectionDrawing({ id: 'section', width: SKETCH_WIDTH });
  const letters = table
    .slice(1)
    .map(([letter, meaning]) => `<dt>${escaped(String(letter))}</dt><dd>${escaped(String(meaning))}</dd>`);
  return `<figure class="sketch">${svg}<figcaption>The section of the lower half</figcaption></figure><dl class="letters">${letters.join('')}</dl>
<p>On the safe side: foot patches are not counted, Poisson’s ratio is that of the table, one foot is taken to carry half of the weight, and the strength is a published minimum. Left out: impact, creep, and the dropping of one end.</p>`;
};

const formulaSection = ({ id, equation, math }: WorksheetFunction): string =>
  equation === 'none'
    ? ''
    : `<h2>How is it calculated?</h2>
${(math ? mathLines(math) : [])
  .map((line, i) => `<div class="math" role="group" aria-label="Formula ${i + 1}" tabindex="0">${mathml(line)}</div>`)
  .join('\n')}
<p class="in-words"><span class="faint">in words</span> ${escaped(closed(equation))}</p>${sectionSketch(id)}`;

const slipSection = (f: WorksheetFunction): string => {
  const all = slips(f);
  if (!all.length) return '';
  return `<h2>What if the cell shows an error?</h2>
<dl class="slips">${all
    .map(
      ({ when, error, formula }) =>
        `<div><dt>${escaped(closed(when))} <span class="code">${escaped(error.code)}</span></dt><dd>${escaped(closed(error.reason))}<br><code class="faint">${escaped(formula)}</code></dd></div>`,
    )
    .join('')}</dl>
${f.id === 'CHECK' ? '' : `<p>Where your spreadsheet does not show the reason, ${functionLink('CHECK')} gives it as text.</p>`}`;
};

/** Settings that the examples read, so that people know what they can change. */
const settingsUsed = (f: WorksheetFunction): SettingKey[] => {
  const used = new Set(f.examples.flatMap(({ args }) => f.explain(args)?.used ?? []));
  return (Object.keys(SETTINGS) as SettingKey[]).filter((key) => used.has(key));
};

const settingSection = (f: WorksheetFunction): string => {
  const used = f.takesSettings && f.id !== 'SETTINGS' ? settingsUsed(f) : [];
  return used.length
    ? `<h2>Which settings change it?</h2><p class="names">${used.map((key) => `<a href="${settingAddress(key)}">${escaped(SETTINGS[key].name)}</a>`).join(' · ')}</p>`
    : '';
};

const blankRemark = (f: WorksheetFunction): string[] =>
  f.arguments.some((a) => a.takes === 'cells')
    ? ['A row whose cells are all blank stays blank, so that a formula filled down over empty rows does no harm.']
    : [];

const syntax = (f: WorksheetFunction): string => {
  const [one, other] = [syntaxText(f.id, f.arguments), syntaxText(f.id, f.arguments, DECIMAL_COMMA)];
  return `<div class="syntax" role="region" aria-label="How it is typed" tabindex="0"><code>=${escaped(one)}</code></div>
${one === other ? '' : `<p class="other">with a decimal comma <code>=${escaped(other)}</code></p>`}`;
};

export const functionPage = (f: WorksheetFunction): Page => {
  const { name } = TOPIC_TEXTS[f.topic];
  const examples = f.examples.filter(({ args }) => !isCellError(f.call(args)));
  const metric = examples.findIndex(({ args }) => !asksForUs(f, args));
  return {
    file: helpFile(f.id),
    title: `JACKET.${f.id}`,
    heading: f.question,
    kind: 'function',
    words: [f.description, name, ...f.arguments.map((a) => `${a.name} ${a.what}`), ...(f.remarks ?? [])].join(' '),
    above: `<p class="above"><a href="${topicFile(f.topic)}">${escaped(name)}</a> <span aria-hidden="true">›</span> <code>${f.id}</code></p>`,
    body: `<p class="lead-text">${escaped(f.description)}</p>
${syntax(f)}
<h2>What does it give?</h2>
${resultText(f)}
${block(examples.map(({ args }, i) => example(f, args, i === metric)).join('\n'), [f])}
${f.arguments.length ? `<h2>What goes in?</h2><dl class="arguments">${f.arguments.map(argumentItem).join('')}</dl>` : ''}
${settingSection(f)}
${formulaSection(f)}
${f.limits.length ? `<h2>Within which limits does it hold?</h2>${list(f.limits.map(({ text }) => escaped(sentence(text))))}` : ''}
${f.remarks?.length || blankRemark(f).length ? `<h2>What else is good to know?</h2>${list([...(f.remarks ?? []), ...blankRemark(f)].map(escaped))}` : ''}
${slipSection(f)}
<h2>How is it known?</h2>
<p><strong>${escaped(sentence(f.basis))}</strong> ${escaped(sentence(f.source))}</p>
${f.related?.length ? `<h2>What belongs to it?</h2><p class="names">${f.related.map(functionLink).join(' · ')}</p>` : ''}`,
  };
};
