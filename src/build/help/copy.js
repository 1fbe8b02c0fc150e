// Copies a formula. A page opened as a file may not have the clipboard; then the formula is marked, ready for Ctrl+C.
(() => {
  const status = document.createElement('p');
  status.className = 'unseen';
  status.setAttribute('role', 'status');
  document.body.append(status);

  const mark = (code) => {
    const range = document.createRange();
    range.selectNodeContents(code);
    const selection = getSelection();
    selection.removeAllRanges();
    selection.addRange(range);
  };

  for (const button of document.querySelectorAll('button.copy')) {
    button.hidden = false;
    const word = button.querySelector('.copy-word');
    const say = (text) => {
      word.textContent = text;
      status.textContent = text;
      setTimeout(() => {
        word.textContent = 'Copy';
        status.textContent = '';
      }, 4000);
    };
    button.addEventListener('click', async () => {
      try {
        await navigator.clipboard.writeText(button.dataset.copy);
        say('Copied');
      } catch {
        mark(button.parentElement.querySelector('code'));
        say('Marked: press Ctrl+C');
      }
    });
  }
})();
