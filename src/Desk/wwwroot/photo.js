// Marking a picture. The picture is shown from the browser's own memory and goes nowhere: the program is told its width and height,
// and where was clicked, as fractions of what is shown. What to ask next and every answer come from the program.

const LOUPE = 132, MAGNIFIED = 3;

export function attach(root, page) {
  const frame = root.querySelector('.photo-frame');
  const view = root.querySelector('.photo-view');
  const stage = root.querySelector('.photo-stage');
  const loupe = root.querySelector('.photo-loupe');
  const images = [...root.querySelectorAll('.photo-stage img')];
  const urls = images.map(() => null);
  const done = new AbortController();
  const on = (target, kind, act, options = {}) => target.addEventListener(kind, act, { signal: done.signal, ...options });

  const isAsking = () => stage.dataset.asking === 'true';
  const active = () => Number(stage.dataset.active);

  // ---- The picture ----
  function show(blob) {
    const number = active(), image = images[number], url = URL.createObjectURL(blob), before = urls[number];
    image.onload = async () => {
      if (before) URL.revokeObjectURL(before);
      urls[number] = url;
      setZoom(1);
      await page.invokeMethodAsync('PictureShown', number, image.naturalWidth, image.naturalHeight);
      requestAnimationFrame(() => root.querySelector('.photo-desk').scrollIntoView({ block: 'start' }));
    };
    image.onerror = () => {
      image.onerror = null;
      URL.revokeObjectURL(url);
      if (before) image.src = before; else image.removeAttribute('src');
      page.invokeMethodAsync('PictureFailed');
    };
    image.src = url;
  }

  function forget() {
    urls.forEach((url, i) => {
      if (!url) return;
      URL.revokeObjectURL(url);
      urls[i] = null;
      images[i].removeAttribute('src');
    });
  }

  on(root, 'change', event => {
    if (event.target.type !== 'file') return;
    const [file] = event.target.files;
    if (file) show(file);
    event.target.value = '';
  });
  on(root, 'dragover', event => {
    if (![...event.dataTransfer.items].some(item => item.kind === 'file')) return;
    event.preventDefault();
    root.dataset.over = 'true';
  });
  on(root, 'dragleave', event => { if (!root.contains(event.relatedTarget)) delete root.dataset.over; });
  on(root, 'drop', event => {
    delete root.dataset.over;
    const [file] = event.dataTransfer.files;
    if (!file) return;
    event.preventDefault();
    show(file);
  });
  on(window, 'pagehide', forget);

  // ---- Zoom ----
  let zoom = 1;
  function setZoom(next, x, y) {
    next = Math.min(8, Math.max(1, next));
    const box = view.getBoundingClientRect(), before = stage.getBoundingClientRect();
    const [cx, cy] = [x ?? box.left + box.width / 2, y ?? box.top + box.height / 2];
    const [fx, fy] = [(cx - before.left) / before.width, (cy - before.top) / before.height];
    zoom = next;
    view.style.setProperty('--zoom', zoom);
    const after = stage.getBoundingClientRect();
    view.scrollLeft += after.left + fx * after.width - cx;
    view.scrollTop += after.top + fy * after.height - cy;
  }
  on(root, 'click', event => {
    const button = event.target.closest('[data-zoom]');
    if (button) setZoom({ in: zoom * 1.5, out: zoom / 1.5, fit: 1 }[button.dataset.zoom]);
  });
  on(view, 'wheel', event => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    setZoom(zoom * Math.exp(-event.deltaY / 300), event.clientX, event.clientY);
  }, { passive: false });

  // ---- Where ----
  function fractions(x, y) {
    const box = stage.getBoundingClientRect();
    return [Math.min(1, Math.max(0, (x - box.left) / box.width)), Math.min(1, Math.max(0, (y - box.top) / box.height))];
  }

  // ---- The loupe: what is under the pointer, larger, the right way round ----
  function magnify(x, y) {
    const image = images[active()], box = stage.getBoundingClientRect(), turns = Number(stage.dataset.turns);
    if (!image.naturalWidth || !box.width) return;
    const [fx, fy] = fractions(x, y);
    const [w, h] = [image.naturalWidth, image.naturalHeight];
    const [ix, iy] = [[fx * w, fy * h], [fy * w, (1 - fx) * h], [(1 - fx) * w, (1 - fy) * h], [(1 - fy) * w, fx * h]][turns];
    const dots = window.devicePixelRatio || 1;
    if (loupe.width !== LOUPE * dots) loupe.width = loupe.height = LOUPE * dots;
    const scale = MAGNIFIED * box.width / (turns % 2 ? h : w);
    const reach = LOUPE / scale * .75;
    const pen = loupe.getContext('2d');
    pen.setTransform(dots, 0, 0, dots, 0, 0);
    pen.fillStyle = '#888';
    pen.fillRect(0, 0, LOUPE, LOUPE);
    pen.translate(LOUPE / 2, LOUPE / 2);
    pen.rotate(turns * Math.PI / 2);
    pen.drawImage(image, ix - reach, iy - reach, 2 * reach, 2 * reach, -reach * scale, -reach * scale, 2 * reach * scale, 2 * reach * scale);
    pen.setTransform(dots, 0, 0, dots, 0, 0);
    for (const [width, colour] of [[3, '#fff'], [1, '#000']]) {
      pen.lineWidth = width;
      pen.strokeStyle = colour;
      pen.beginPath();
      for (const [a, b] of [[0, .42], [.58, 1]]) {
        pen.moveTo(a * LOUPE, LOUPE / 2); pen.lineTo(b * LOUPE, LOUPE / 2);
        pen.moveTo(LOUPE / 2, a * LOUPE); pen.lineTo(LOUPE / 2, b * LOUPE);
      }
      pen.stroke();
    }
    // Beside the pointer, on the side that has room; never under a finger.
    const around = frame.getBoundingClientRect(), away = LOUPE + 28;
    const left = Math.max(0, Math.min(around.width - LOUPE, x - around.left - (x - around.left > away ? away : -28)));
    const top = y - around.top - (y - around.top > away ? away : -28);
    loupe.style.transform = `translate(${left}px, ${top}px)`;
    loupe.hidden = false;
  }
  const hideLoupe = () => { loupe.hidden = true; };

  // ---- Moving a mark: at once here, to the program one at a time ----
  let sending = false, waiting = null;
  async function send(move) {
    waiting = { ...move, isNew: move.isNew || (waiting?.key === move.key && waiting.isNew) };
    if (sending) return;
    sending = true;
    while (waiting) {
      const next = waiting;
      waiting = null;
      await page.invokeMethodAsync('Move', next.key, next.fx, next.fy, next.isNew);
    }
    sending = false;
  }
  function move(mark, fx, fy, isNew) {
    mark.style.left = `${fx * 100}%`;
    mark.style.top = `${fy * 100}%`;
    send({ key: mark.dataset.mark, fx, fy, isNew });
  }

  // ---- Pointers: press, look, let go; two fingers move and zoom ----
  const down = new Map();
  let pressed = null, pinch = null;
  on(stage, 'pointerdown', event => {
    if (event.button > 0) return;
    down.set(event.pointerId, event);
    if (down.size === 2) {
      pressed = null;
      hideLoupe();
      pinch = fingers();
      return;
    }
    const mark = event.target.closest('[data-mark]');
    if (!mark && !isAsking()) return;
    pressed = { id: event.pointerId, mark, isNew: true, x: event.clientX, y: event.clientY };
    if (mark) mark.focus({ preventScroll: true });
    stage.setPointerCapture(event.pointerId);
    event.preventDefault();
    magnify(event.clientX, event.clientY);
  });
  on(stage, 'pointermove', event => {
    if (down.has(event.pointerId)) down.set(event.pointerId, event);
    if (pinch && down.size === 2) {
      const now = fingers();
      view.scrollLeft -= now.x - pinch.x;
      view.scrollTop -= now.y - pinch.y;
      setZoom(zoom * now.apart / pinch.apart, now.x, now.y);
      pinch = now;
    } else if (pressed?.id === event.pointerId) {
      magnify(event.clientX, event.clientY);
      // A click on a mark is no move.
      if (!pressed.mark || (pressed.isNew && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) < 3)) return;
      move(pressed.mark, ...fractions(event.clientX, event.clientY), pressed.isNew);
      pressed.isNew = false;
    } else if (event.pointerType === 'mouse' && (isAsking() || event.target.closest('[data-mark]'))) {
      magnify(event.clientX, event.clientY);
    }
  });
  on(stage, 'pointerup', event => {
    down.delete(event.pointerId);
    if (down.size < 2) pinch = null;
    if (pressed?.id !== event.pointerId) return;
    const { mark, isNew } = pressed;
    pressed = null;
    if (event.pointerType !== 'mouse') hideLoupe();
    // Marks may lie on each other, a crown on an elbow: a press without a move marks what is asked.
    if (mark && !(isNew && isAsking())) return;
    page.invokeMethodAsync('Place', ...fractions(event.clientX, event.clientY)).then(() => requestAnimationFrame(() => { if (!isAsking()) hideLoupe(); }));
  });
  on(stage, 'pointercancel', event => { down.delete(event.pointerId); pinch = pressed = null; hideLoupe(); });
  on(stage, 'pointerleave', () => { if (!pressed) hideLoupe(); });

  function fingers() {
    const [a, b] = [...down.values()];
    return {
      x: (a.clientX + b.clientX) / 2, y: (a.clientY + b.clientY) / 2,
      apart: Math.max(1, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)),
    };
  }

  // ---- Keys: place in the middle of what is seen, then arrows ----
  const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  on(root, 'keydown', event => {
    const mark = event.target.closest?.('[data-mark]');
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !event.target.matches('input, select')) {
      event.preventDefault();
      page.invokeMethodAsync('Undo');
    } else if (mark && arrows[event.key]) {
      event.preventDefault();
      const [dx, dy] = arrows[event.key], step = event.shiftKey ? 10 : 1, box = stage.getBoundingClientRect(), at = mark.getBoundingClientRect();
      const [fx, fy] = fractions(at.left + at.width / 2 + dx * step, at.top + at.height / 2 + dy * step);
      move(mark, fx, fy, !event.repeat);
      magnify(box.left + fx * box.width, box.top + fy * box.height);
    } else if (mark && event.key === 'Enter') {
      event.preventDefault();
      hideLoupe();
      root.querySelector('[data-place]')?.focus();
    }
  });
  on(root, 'focusout', event => { if (event.target.matches?.('[data-mark]') && !pressed) hideLoupe(); });
  on(root, 'click', async event => {
    if (event.target.closest('[data-answer]')) root.querySelector('.photo-answer').scrollIntoView({ block: 'start' });
    const begin = event.target.closest('[data-begin]');
    if (begin) {
      // The question takes less room than what was asked first: the picture comes up to it. By keys, the focus goes along.
      const place = await found('[data-place]');
      root.querySelector('.photo-desk').scrollIntoView({ block: 'start' });
      if (event.detail === 0) place?.focus({ preventScroll: true });
    }
    if (!event.target.closest('[data-place]')) return;
    const box = view.getBoundingClientRect();
    const key = await page.invokeMethodAsync('Place', ...fractions(box.left + box.width / 2, box.top + box.height / 2));
    if (key) (await found(`[data-mark="${key}"]`))?.focus();
  });

  // What the program draws in answer to a click.
  async function found(selector) {
    for (let i = 0; i < 100; i++) {
      const element = root.querySelector(selector);
      if (element) return element;
      await new Promise(go => setTimeout(go, 10));
    }
    return null;
  }

  root.dataset.live = 'true';
  return {
    showDrawing: svg => show(new Blob([svg], { type: 'image/svg+xml' })),
    forget: number => {
      if (urls[number]) URL.revokeObjectURL(urls[number]);
      urls[number] = null;
      images[number].removeAttribute('src');
    },
    dispose: () => { forget(); done.abort(); },
  };
}
