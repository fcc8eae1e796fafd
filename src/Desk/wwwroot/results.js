// Keys and focus of the results page. What a key does in a cell is written beside the cell by the page; here it is only carried out,
// so that typing never waits for the program. Texts are sent in the order typed, one batch at a time, and kept until they are stored.

export function attach(rootId, page) {
  const root = document.getElementById(rootId);
  if (!root || root.dataset.live) return;
  root.dataset.live = 'true';

  const shown = new WeakMap();     // cell -> the text the program last agreed to
  const queue = new Map();         // "pupil cell" -> text, in the order typed, not yet sent
  let sending = null;              // the batch on its way
  let turning = false;             // between two pupils
  let typedAhead = [];             // keys pressed meanwhile

  const store = `slantwise-unsent:${location.pathname}`;
  const pupil = () => root.dataset.pupil;
  const cells = () => [...root.querySelectorAll('input[data-cell]')];
  const cellOf = key => key ? root.querySelector(`input[data-cell="${key}"]`) : null;
  const isCell = element => element instanceof HTMLInputElement && 'cell' in element.dataset;
  const agreed = cell => shown.get(cell) ?? cell.dataset.opening;

  function focus(cell) {
    if (!cell) return;
    cell.focus();
    cell.select();
  }

  // ---- Sending ----
  function remember() {
    const unsent = [...(sending ?? []), ...queue];
    try {
      if (unsent.length) sessionStorage.setItem(store, JSON.stringify(unsent));
      else sessionStorage.removeItem(store);
    } catch { /* A browser without storage still sends; only a reload in that moment would lose the text. */ }
    root.dataset.saving = unsent.length ? 'true' : 'false';
  }

  function commit(cell) {
    if (cell.value === agreed(cell)) return;
    shown.set(cell, cell.value);
    const place = `${pupil()} ${cell.dataset.cell}`;
    queue.delete(place);
    queue.set(place, cell.value);
    remember();
    send();
  }

  async function send() {
    if (sending || !queue.size) return;
    // One pupil a batch, from the front of the queue.
    const whose = queue.keys().next().value.split(' ')[0];
    sending = [...queue].filter(([place]) => place.startsWith(whose));
    sending.forEach(([place]) => queue.delete(place));
    try {
      const texts = await page.invokeMethodAsync('Commit', whose, sending.map(([place, text]) => ({ key: place.split(' ')[1], text })));
      sending = null;
      remember();
      show(texts);
      send();
    } catch {
      // The program cannot be reached: back to the front of the queue, newer texts of the same cells winning.
      const newer = [...queue];
      queue.clear();
      [...sending, ...newer].forEach(([place, text]) => queue.set(place, text));
      sending = null;
      remember();
      setTimeout(send, 2000);
    }
  }

  async function allSent() {
    while (sending || queue.size) await new Promise(go => setTimeout(go, 15));
  }

  function show(texts) {
    if (!texts || texts.pupilId !== pupil()) return;
    for (const cell of cells()) {
      const text = texts.texts[cell.dataset.cell];
      const isBusy = queue.has(`${pupil()} ${cell.dataset.cell}`) || cell.value !== agreed(cell);
      if (text === undefined || isBusy) continue;
      shown.set(cell, text);
      if (cell.value === text) continue;
      cell.value = text;
      if (cell === document.activeElement) cell.select();
    }
    focus(cellOf(texts.focus));
  }

  async function ask(method, ...rest) {
    if (isCell(document.activeElement)) commit(document.activeElement);
    await allSent();
    const texts = await page.invokeMethodAsync(method, pupil(), ...rest);
    show(texts);
  }

  // ---- From pupil to pupil ----
  // Loading the page again comes back to the same pupil.
  const keepAddress = () => history.replaceState(history.state, '', `${location.pathname}?pupil=${pupil()}`);
  const buttons = () => [...root.querySelectorAll('[data-open]')];

  async function open(id) {
    if (!id || turning) return;
    turning = true;
    if (isCell(document.activeElement)) commit(document.activeElement);
    await allSent();
    const texts = await page.invokeMethodAsync('Open', id);
    for (let i = 0; i < 200 && pupil() !== id; i++) await new Promise(go => setTimeout(go, 5));
    keepAddress();
    turning = false;
    show(texts);
    root.querySelector(`[data-open="${id}"]`)?.scrollIntoView({ block: 'nearest' });
    const ahead = typedAhead;
    typedAhead = [];
    ahead.forEach(replay);
  }

  function turn(step) {
    const all = buttons().map(button => button.dataset.open);
    const place = all.indexOf(pupil()) + step;
    if (place >= 0 && place < all.length) open(all[place]);
  }

  function replay(key) {
    if (turning) { typedAhead.push(key); return; }
    const cell = document.activeElement;
    if (!isCell(cell) || press(cell, key)) return;
    if (key.key.length === 1 && !key.ctrlKey) {
      cell.setRangeText(key.key, cell.selectionStart, cell.selectionEnd, 'end');
      typed(cell);
    } else if (key.key === 'Backspace' || key.key === 'Delete') {
      cell.value = '';
    }
  }

  // ---- Typing ----
  function typed(cell) {
    const { advance, handsOn, absent, seconds, decision, after } = cell.dataset;
    const last = cell.value.slice(-1).toLowerCase();
    if (last && (handsOn ?? '').includes(last)) {
      cell.value = cell.value.slice(0, -1);
      commit(cell);
      const target = cellOf(decision);
      target.value = last;
      focus(target);
      typed(target);
    } else if (last && last === absent) {
      cell.value = cell.value.slice(0, -1);
      act('absent');
    } else if (last && last === seconds) {
      cell.value = cell.value.slice(0, -1);
      act('seconds', cell.dataset.cell.split('.')[0]);
    } else if (advance && new RegExp(advance).test(cell.value)) {
      commit(cell);
      focus(cellOf(after));
    }
  }

  // Whether the key was ours.
  function press(cell, key) {
    const d = cell.dataset;
    const isEmpty = cell.value === '';
    const isWhole = cell.selectionStart === 0 && cell.selectionEnd === cell.value.length;
    const atStart = isWhole || cell.selectionEnd === 0;
    const atEnd = isWhole || cell.selectionStart === cell.value.length;
    const go = target => { commit(cell); focus(cellOf(target)); return true; };
    if (key.ctrlKey || key.metaKey) {
      if (key.key === 'Enter') { turn(+1); return true; }
      if (key.key === 'z' || key.key === 'Z') {
        if (cell.value !== agreed(cell)) { cell.value = agreed(cell); cell.select(); } else act('undo');
        return true;
      }
      return false;
    }
    switch (key.key) {
      case 'PageDown': turn(+1); return true;
      case 'PageUp': turn(-1); return true;
      case 'ArrowUp': return go(d.above);
      case 'ArrowDown': return go(d.below);
      case 'ArrowLeft': return atStart && go(d.before);
      case 'ArrowRight': return atEnd && go(d.after);
      case 'Enter':
        if (d.onward) return go(d.onward);
        commit(cell);
        root.querySelector('[data-act="next"]').focus();
        return true;
      case 'Escape': cell.value = agreed(cell); cell.select(); return true;
      case 'Backspace':
        if (isEmpty) return go(d.before);
        return false;
      case '/':
        if (d.toggle === undefined) return false;
        commit(cell);
        root.querySelector('[data-find]').focus();
        return true;
      case ' ': {
        if (d.toggle === undefined) return false;
        const toggle = JSON.parse(d.toggle);
        if (!(cell.value in toggle)) return go(d.after);
        cell.value = toggle[cell.value];
        commit(cell);
        cell.select();
        return true;
      }
      default: return false;
    }
  }

  function act(name, task) {
    switch (name) {
      case 'absent': ask('TurnAbsent'); break;
      case 'seconds': ask('TurnSeconds', Number(task)); break;
      case 'undo': ask('Undo'); break;
      case 'retry': page.invokeMethodAsync('Commit', pupil(), []).then(show); break;
      case 'next': turn(+1); break;
      case 'previous': turn(-1); break;
    }
  }

  root.addEventListener('keydown', event => {
    if (event.isComposing || event.altKey) return;
    if (turning) {
      typedAhead.push({ key: event.key, ctrlKey: event.ctrlKey, metaKey: event.metaKey });
      event.preventDefault();
      return;
    }
    if (isCell(event.target)) {
      if (press(event.target, event)) event.preventDefault();
    } else if (event.target.matches('[data-find]') && event.key === 'Enter') {
      event.preventDefault();
      const found = buttons().find(button => !button.closest('li').hidden);
      if (found) { event.target.value = ''; find(''); open(found.dataset.open); }
    } else if (event.key === 'PageDown' || (event.key === 'Enter' && event.ctrlKey)) {
      turn(+1);
      event.preventDefault();
    } else if (event.key === 'PageUp') {
      turn(-1);
      event.preventDefault();
    }
  });

  root.addEventListener('input', event => {
    if (isCell(event.target)) { if (!event.isComposing) typed(event.target); }
    else if (event.target.matches('[data-find]')) find(event.target.value);
  });

  root.addEventListener('focusin', event => { if (isCell(event.target)) event.target.select(); });
  root.addEventListener('focusout', event => { if (isCell(event.target) && !turning) commit(event.target); });

  root.addEventListener('click', event => {
    const button = event.target.closest('[data-act], [data-open]');
    if (!button) return;
    if (button.dataset.open) open(button.dataset.open);
    else act(button.dataset.act, button.dataset.task);
  });

  const plain = text => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

  function find(text) {
    const wanted = plain(text.trim());
    let none = true;
    for (const item of root.querySelectorAll('[data-names]')) {
      item.hidden = !plain(item.dataset.names).includes(wanted);
      none &&= item.hidden;
    }
    root.querySelector('[data-none]').hidden = !none;
  }

  // Texts that a reload caught on their way.
  try {
    for (const [place, text] of JSON.parse(sessionStorage.getItem(store) ?? '[]')) {
      queue.set(place, text);
      const [whose, key] = place.split(' ');
      if (whose === pupil() && cellOf(key)) cellOf(key).value = text;
    }
  } catch { sessionStorage.removeItem(store); }
  keepAddress();
  remember();
  send();

  const firstOpen = cells().find(cell => cell.dataset.cell.includes('.Level.')
    && cells().filter(other => other.dataset.cell.startsWith(cell.dataset.cell.split('.', 2).join('.') + '.')).every(other => other.value === ''));
  focus(firstOpen ?? cells()[0]);
}
