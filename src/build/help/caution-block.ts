/** The block in which a number that can hurt somebody stands together with its limits, its source and its cautions. */
import { sign } from '../../drawing/signs.ts';
import type { WorksheetFunction } from '../../functions/define.ts';
import { cautionsFor, FOLLOW, PLANNING } from '../../texts/cautions.ts';
import { escaped } from '../html.ts';
import { functionLink, sentence } from './elements.ts';
import { CAUTIONS_FILE } from './names.ts';

const known = (f: WorksheetFunction, named: boolean): string => {
  const limits = f.limits.length ? f.limits.map(({ text }) => sentence(text)).join(' ') : PLANNING;
  return `<div class="known">${named ? `<p class="known-name">${functionLink(f.id)}</p>` : ''}
<p data-limit="${f.id}"><strong>Limits.</strong> ${escaped(limits)}</p>
<p data-source="${f.id}"><strong>How it is known.</strong> ${escaped(sentence(f.basis))} ${escaped(sentence(f.source))}</p></div>`;
};

const caution = (hurting: readonly WorksheetFunction[]): string => {
  const cautions = cautionsFor(hurting.flatMap((f) => f.hurts ?? []));
  return `<div class="caution" role="note" aria-label="Cautions for these numbers">
<p class="lead">${sign('warning', 24)}<span><strong>${escaped(PLANNING)}</strong> ${escaped(FOLLOW)}</span></p>
<ul class="signs">${cautions
    .map(
      ({ id, title, text, sign: name }) =>
        `<li data-caution="${id}">${sign(name, 32)}<span><strong>${escaped(title)}.</strong> ${escaped(text)} <a href="${CAUTIONS_FILE}#${id}">Why: ${escaped(title.toLowerCase())}</a></span></li>`,
    )
    .join('')}</ul>
${hurting.map((f) => known(f, hurting.length > 1)).join('\n')}
</div>`;
};

/** Numbers and, where a function that gave one can hurt somebody, what must stand beside them. */
export const block = (inner: string, used: readonly WorksheetFunction[]): string => {
  const hurting = used.filter((f, i) => f.hurts?.length && used.indexOf(f) === i);
  return `<div class="worked" data-block>\n${inner}\n${hurting.length ? caution(hurting) : ''}\n</div>`;
};
