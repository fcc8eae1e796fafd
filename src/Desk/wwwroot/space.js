// A hall by hand. What is held moves here at once, in steps of 10 cm; the program hears of it when it is let go.
// How long a drag's picture takes to follow is kept as "hall-drag" measures of the browser.

export function attach(rootId, page) {
  const root = document.getElementById(rootId);
  if (!root || root.dataset.live) return;

  const map = () => root.querySelector('svg.hall-map');
  const find = key => root.querySelector(`[data-key="${key}"]`);
  const moved = new Map();      // key -> where it is, until the program has drawn it there
  let drag = null, frame = 0, timer = 0;

  const number = (element, name) => Number(element.dataset[name]);
  const whereIs = key => moved.get(key) ?? (at => at && { x: number(at, 'x'), y: number(at, 'y') })(find(key));

  function inside(value, side) {
    const step = number(map(), 'step');
    return Math.min(number(map(), side), Math.max(0, Math.round(value / step) * step));
  }

  function draw(key) {
    const held = find(key), to = moved.get(key), mm = number(map(), 'mm');
    for (const group of root.querySelectorAll(`[data-moves="${key}"]`)) {
      if (!to || !held) group.removeAttribute('transform');
      else group.setAttribute('transform', `translate(${(to.x - number(held, 'x')) * mm} ${-(to.y - number(held, 'y')) * mm})`);
    }
    map().classList.toggle('moving', moved.size > 0);
  }

  function move(key, x, y) {
    moved.set(key, { x: inside(x, 'width'), y: inside(y, 'depth') });
    draw(key);
  }

  async function settle(key) {
    const to = moved.get(key);
    if (!to) return;
    try {
      await page.invokeMethodAsync('MoveTo', key, to.x, to.y);
    } catch {
      // The connection is gone: the page says so itself.
    }
    // Moved on meanwhile: it is drawn from its new place and told later.
    if (moved.get(key) === to) moved.delete(key);
    draw(key);
  }

  root.addEventListener('pointerdown', event => {
    const held = event.target.closest?.('[data-key]');
    if (drag || !held || !event.isPrimary || event.button !== 0) return;
    event.preventDefault();
    held.focus({ preventScroll: true });
    root.setPointerCapture(event.pointerId);
    if (performance.getEntriesByName('hall-drag').length > 1000) performance.clearMeasures('hall-drag');
    drag = { id: event.pointerId, key: held.dataset.key, from: whereIs(held.dataset.key), scale: 1 / (map().getScreenCTM().a * number(map(), 'mm')), x: event.clientX, y: event.clientY, last: null };
    held.classList.add('held');
  });

  root.addEventListener('pointermove', event => {
    if (!drag || event.pointerId !== drag.id) return;
    drag.last = event;
    frame ||= requestAnimationFrame(() => {
      frame = 0;
      if (!drag?.last) return;
      follow();
      performance.measure('hall-drag', { start: drag.last.timeStamp, end: performance.now() });
    });
  });

  function follow() {
    move(drag.key, drag.from.x + (drag.last.clientX - drag.x) * drag.scale, drag.from.y - (drag.last.clientY - drag.y) * drag.scale);
  }

  function over(event, isDone) {
    if (!drag || event.pointerId !== drag.id) return;
    if (isDone && drag.last) follow();
    const { key, last } = drag;
    find(key)?.classList.remove('held');
    drag = null;
    if (!last) return;
    if (isDone) settle(key);
    else { moved.delete(key); draw(key); }
  }
  root.addEventListener('pointerup', event => over(event, true));
  root.addEventListener('pointercancel', event => over(event, false));
  // A finger on a mat drags; anywhere else it scrolls the page.
  root.addEventListener('touchstart', event => {
    if (event.target.closest?.('[data-key]')) event.preventDefault();
  }, { passive: false });

  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
  root.addEventListener('keydown', event => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !event.target.matches('input, select')) {
      event.preventDefault();
      page.invokeMethodAsync('StepBack');
      return;
    }
    const key = event.target.dataset?.key;
    if (!key || event.ctrlKey || event.metaKey || event.altKey) return;
    if (ways[event.key]) {
      event.preventDefault();
      const [right, up] = ways[event.key], step = number(map(), 'step') * (event.shiftKey ? 5 : 1), at = whereIs(key);
      move(key, at.x + right * step, at.y + up * step);
      // A held arrow is one step for the program: told when it is let go, or soon.
      clearTimeout(timer);
      timer = setTimeout(() => settle(key), 600);
    } else if (event.key.toLowerCase() === 'r' && key !== 'teacher') {
      event.preventDefault();
      page.invokeMethodAsync('TurnMat', key);
    }
  });
  root.addEventListener('keyup', event => {
    const key = event.target.dataset?.key;
    if (!key || !ways[event.key] || !moved.has(key)) return;
    clearTimeout(timer);
    settle(key);
  });
  // What has the focus is what the buttons over the drawing are for.
  root.addEventListener('focusin', event => {
    const key = event.target.dataset?.key;
    if (key) page.invokeMethodAsync('Pick', key);
  });
  root.addEventListener('focusout', event => {
    const key = event.target.dataset?.key;
    if (key && !drag && moved.has(key)) { clearTimeout(timer); settle(key); }
  });

  root.addEventListener('click', event => {
    const show = event.target.closest?.('[data-show]');
    const mat = show && document.getElementById(show.dataset.show);
    if (!mat) return;
    mat.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    mat.focus({ preventScroll: true });
  });

  root.dataset.live = 'true';
}
