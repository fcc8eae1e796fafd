// Photographed sheets. Sending: files go one by one, and what becomes of each is said as it comes. Review: a key presses the button
// that shows it; nothing is answered here.

const rows = form => form.querySelector('[data-sent] ul') ?? (() => {
  const list = document.createElement('ul');
  list.className = 'sent-files';
  const line = document.createElement('p');
  line.setAttribute('role', 'status');
  form.querySelector('[data-sent]').append(line, list);
  return list;
})();

function rowOf(form, file) {
  const row = document.createElement('li');
  const name = document.createElement('strong');
  const bar = document.createElement('progress');
  const says = document.createElement('span');
  name.textContent = file.name;
  bar.max = 1;
  bar.value = 0;
  bar.setAttribute('aria-label', file.name);
  row.append(name, bar, says);
  rows(form).append(row);
  return { row, bar, says };
}

function say(at, kind, text) {
  at.row.className = kind;
  at.says.textContent = text;
}

// One file: its bytes, then a line of JSON for each page as it is read.
function send(form, file, at, address) {
  return new Promise(done => {
    const body = new FormData();
    body.append('files', file, file.name);
    const request = new XMLHttpRequest();
    const lines = [];
    let taken = 0;
    request.open('POST', address);
    request.setRequestHeader('Accept', 'application/x-ndjson');
    request.upload.onprogress = e => {
      at.bar.value = e.lengthComputable ? 0.9 * e.loaded / e.total : 0;
      say(at, '', e.loaded < e.total ? form.dataset.saysSending : form.dataset.saysReading);
    };
    request.onprogress = () => {
      const text = request.responseText;
      for (let end = text.indexOf('\n', taken); end >= 0; end = text.indexOf('\n', taken)) {
        lines.push(JSON.parse(text.slice(taken, end)));
        taken = end + 1;
        const last = lines[lines.length - 1];
        say(at, lines.some(l => l.kind === 'unread') ? 'unread' : last.kind, lines.map(l => l.text).slice(-2).join(' '));
      }
    };
    request.onloadend = () => {
      request.onprogress();
      at.bar.remove();
      if (request.status !== 200) say(at, 'unread', form.dataset.saysLost);
      done(lines);
    };
    request.send(body);
  });
}

async function sendAll(form, files) {
  if (form.dataset.sending || !files.length) return;
  const most = Number(form.dataset.maxFiles);
  form.dataset.sending = 'true';
  const pile = [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, '0')).join('');
  const address = form.getAttribute('action') + (form.getAttribute('action').includes('?') ? '&' : '?') + 'pile=' + pile;
  const all = [...files].slice(0, most).map(file => ({ file, at: rowOf(form, file) }));
  const status = form.querySelector('[data-sent] p');
  const untold = [];
  let count = 0;
  let isSent = false;
  const progress = () => { status.textContent = form.dataset.saysProgress.replace('{0}', count).replace('{1}', all.length); };
  progress();
  for (const { file, at } of all) {
    if (file.size > Number(form.dataset.maxBytes)) say(at, 'unread', form.dataset.saysLarge), at.bar.remove();
    else {
      const lines = await send(form, file, at, address);
      isSent ||= lines.length > 0;
      if (lines.some(line => line.isUntold)) untold.push({ file, at });
    }
    count++;
    progress();
  }
  // Pages without a code that came before any with one: now that the others are read, their form is known.
  if (untold.length < all.length) for (const { file, at } of untold) await send(form, file, at, address + '&again=1');
  delete form.dataset.sending;
  if (files.length > most) status.textContent = form.dataset.saysMany;
  form.dataset.sent = 'true';
  const lesson = new URL(form.action).searchParams.get('lesson');
  if (isSent) location.assign((lesson ? `/lessons/${lesson}/scans` : '/scans') + `?pile=${pile}`);
}

if (!document.documentElement.dataset.uploads) {
  document.documentElement.dataset.uploads = 'true';
  // On the document: a page that comes alive draws its forms anew.
  const formAt = e => e.target.closest?.('form[data-upload]');
  document.addEventListener('change', e => {
    const form = formAt(e);
    if (form && e.target.type === 'file') {
      sendAll(form, [...e.target.files]);
      e.target.value = '';
    }
  });
  const isFiles = e => [...(e.dataTransfer?.types ?? [])].includes('Files');
  document.addEventListener('dragover', e => {
    const form = formAt(e);
    document.querySelectorAll('form[data-upload].over').forEach(f => { if (f !== form) f.classList.remove('over'); });
    if (!form || !isFiles(e)) return;
    e.preventDefault();
    form.classList.add('over');
  });
  document.addEventListener('dragleave', e => { if (!e.relatedTarget) document.querySelectorAll('form[data-upload].over').forEach(f => f.classList.remove('over')); });
  document.addEventListener('drop', e => {
    const form = formAt(e);
    if (!form || !isFiles(e)) return;
    e.preventDefault();
    form.classList.remove('over');
    sendAll(form, [...e.dataTransfer.files]);
  });
  addEventListener('beforeunload', e => { if (document.querySelector('form[data-sending]')) e.preventDefault(); });
}

// ---- Review ----
export function attachReview(rootId) {
  const root = document.getElementById(rootId);
  if (!root || root.dataset.live) return;
  let left = '';   // the turn that was answered: what comes before the next card is drawn is not meant for it

  root.addEventListener('click', e => {
    const answer = e.target.closest('[data-answer]');
    const isPress = answer && (e.target.closest('button') ?? answer).matches('button');
    if (!isPress) return;
    // The second click of a double one falls on a card nobody has seen.
    if (left === root.dataset.turn || e.detail > 1) {
      e.preventDefault();
      e.stopPropagation();
      return;
    }
    left = root.dataset.turn;
    root.querySelector('[data-focus]')?.focus({ preventScroll: true });
  }, true);

  document.addEventListener('keydown', e => {
    if (e.ctrlKey || e.altKey || e.metaKey || e.isComposing || !root.isConnected) return;
    const typing = e.target.closest('input, select, textarea');
    if (typing && !(typing.value === '' && ['arrowleft', 'arrowright', 'z'].includes(e.key.toLowerCase()))) return;
    if (!typing && e.key === 'Enter' && e.target.closest('button, a, summary')) return;
    const button = [...root.querySelectorAll('[data-keys]')].find(b => b.dataset.keys.split(' ').includes(e.key.toLowerCase()));
    if (!button || button.closest('[disabled]')) return;
    e.preventDefault();
    // A key held down answers once.
    if (!e.repeat || !button.matches('[data-answer]')) button.click();
  });
  showCard(rootId);
  root.dataset.live = 'true';
}

export function showCard(rootId) {
  const root = document.getElementById(rootId);
  const seconds = root?.querySelector('[data-seconds]');
  const at = seconds ?? root?.querySelector('[data-focus]');
  at?.focus({ preventScroll: true });
  seconds?.select();
  // On a phone the picture and the first answers fill the screen, each time at the same place.
  if (at && (innerWidth < 640 || at.getBoundingClientRect().top < 0)) root.scrollIntoView({ block: 'start' });
}
