// Search of the help pages: plain words against the list in search-index.js, which stands beside this file. Needs no server.
(() => {
  const place = document.querySelector('.search');
  const input = document.getElementById('search');
  const found = document.querySelector('.found');
  const results = document.querySelector('.results');
  const all = document.querySelector('.all');
  const index = globalThis.HELP_INDEX;
  if (!place || !input || !index) return;
  place.hidden = false;

  const plain = (text) => text.toLowerCase().replaceAll('_', ' ');
  const list = index.map((entry) => ({
    entry,
    fields: [plain(entry.name).replace(/^jacket\./, ''), plain(entry.text), plain(entry.words)],
  }));
  /** How well a word fits: the place of the first field that has it; the beginning of a name comes first of all. */
  const rank = (word, fields) => {
    if (fields[0].startsWith(word)) return -1;
    const at = fields.findIndex((field) => field.includes(word));
    return at < 0 ? Number.POSITIVE_INFINITY : at;
  };

  const look = () => {
    const words = plain(input.value)
      .replace(/[=(),;]/g, ' ')
      .replaceAll('jacket.', '')
      .split(/\s+/)
      .filter(Boolean);
    all.hidden = words.length > 0;
    results.replaceChildren();
    found.textContent = '';
    if (words.length === 0) return;
    const hits = list
      .map(({ entry, fields }) => ({ entry, score: words.reduce((sum, word) => sum + rank(word, fields), 0) }))
      .filter(({ score }) => score < Number.POSITIVE_INFINITY)
      .sort((a, b) => a.score - b.score);
    for (const { entry } of hits) {
      const item = document.createElement('li');
      const link = document.createElement('a');
      link.href = entry.to;
      link.textContent = entry.name;
      const text = document.createElement('span');
      text.className = 'summary';
      text.textContent = entry.text;
      item.append(link, text);
      results.append(item);
    }
    found.textContent =
      hits.length === 0 ? 'Nothing found. Try one plain word, such as water, weight or feet.' : `${hits.length} found`;
  };

  input.addEventListener('input', look);
  input.addEventListener('keydown', (event) => {
    const first = results.querySelector('a');
    if (event.key !== 'Enter' || !first) return;
    event.preventDefault();
    first.focus();
  });
  look();
})();
