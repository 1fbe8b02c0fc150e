/** The first page: search, guides, and all functions by topic. And the pages of the topics. */
import { TOPICS, type Topic } from '../../functions/define.ts';
import { functions } from '../../functions/index.ts';
import { escaped } from '../html.ts';
import { functionLink, sentence } from './elements.ts';
import type { Page } from './frame.ts';
import { GUIDES } from './guides/index.ts';
import { CAUTIONS_FILE, helpFile, INDEX_FILE, SETTINGS_FILE, SOURCES_FILE, topicFile } from './names.ts';
import { partsDrawing } from './parts-drawing.ts';
import { TOPIC_TEXTS } from './topics.ts';

const ofTopic = (topic: Topic) => functions.filter((f) => f.topic === topic);

/** Topics that have functions. */
export const usedTopics: readonly Topic[] = TOPICS.filter((topic) => ofTopic(topic).length > 0);

const guideItem = (file: string, question: string, summary: string): string =>
  `<li><a href="${file}">${escaped(question)}</a><span class="summary">${escaped(summary)}</span></li>`;

const topicSection = (topic: Topic): string => {
  const { name } = TOPIC_TEXTS[topic];
  return `<section class="topic"><h3><a href="${topicFile(topic)}">${escaped(name)}</a></h3>
<dl class="functions">${ofTopic(topic)
    .map((f) => `<div><dt>${functionLink(f.id)}</dt><dd>${escaped(f.question)}</dd></div>`)
    .join('')}</dl></section>`;
};

export const indexPage = (): Page => ({
  file: INDEX_FILE,
  title: 'Help',
  heading: 'What do you want to know?',
  kind: 'index',
  words: '',
  body: `<div class="search" role="search" hidden>
<label for="search">Search functions, settings and guides</label>
<input id="search" type="search" autocomplete="off" spellcheck="false">
<p class="found" role="status"></p>
<ol class="results"></ol>
</div>
<div class="all">
<h2>Where do I begin?</h2>
<ul class="guides">${GUIDES.map(({ file, question, summary }) => guideItem(file, question, summary)).join('')}
${guideItem(CAUTIONS_FILE, 'What can hurt me at this work?', 'Dust, eyes, heat, lifting, solvents, turning over.')}
${guideItem(SETTINGS_FILE, 'Which defaults are there, and may I change them?', 'All settings with values in both systems, ranges and sources.')}
${guideItem(SOURCES_FILE, 'Where do the numbers come from?', 'Sources of functions, materials and settings.')}</ul>
<h2>What are the parts called?</h2>
${partsDrawing()}
<h2>Which function answers my question?</h2>
${usedTopics.map(topicSection).join('\n')}
</div>`,
});

export const topicPage = (topic: Topic): Page => {
  const { name, question, text } = TOPIC_TEXTS[topic];
  const at = usedTopics.indexOf(topic);
  const [before, after] = [usedTopics[at - 1], usedTopics[at + 1]];
  return {
    file: topicFile(topic),
    title: name,
    heading: question,
    kind: 'topic',
    words: `${name} ${text}`,
    above: `<p class="above"><a href="${INDEX_FILE}">All help</a> <span aria-hidden="true">›</span> ${escaped(name)}</p>`,
    body: `<p class="lead-text">${escaped(text)}</p>
${ofTopic(topic)
  .map(
    (f) => `<section class="entry"><h2><a href="${helpFile(f.id)}">${escaped(f.question)}</a></h2>
<p><code>${f.id}</code> ${escaped(sentence(f.description))}</p></section>`,
  )
  .join('\n')}
<nav class="steps" aria-label="Topics">${before ? `<a href="${topicFile(before)}">Before: ${escaped(TOPIC_TEXTS[before].name)}</a>` : ''}${after ? `<a href="${topicFile(after)}">Next: ${escaped(TOPIC_TEXTS[after].name)}</a>` : ''}</nav>`,
  };
};
