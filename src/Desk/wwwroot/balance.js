// Dragging in the balance studio. The program answers every move; here moves are only gathered: one a frame, one message on its way.
// How long an answer takes, from the newest move it carries to the changed page, is kept as a "balance-drag" measure of the browser.

export function attach(rootId, page) {
  const root = document.getElementById(rootId);
  if (!root || root.dataset.live) return;
  root.dataset.live = 'true';

  let drag = null;      // what is dragged: handle, start, scale, latest move
  let frame = 0;

  // Of several handles under a finger, the nearest.
  function nearest(svg, x, y) {
    const to = svg.getScreenCTM();
    let best = null;
    for (const handle of svg.querySelectorAll('[data-handle]')) {
      const at = new DOMPoint(+handle.dataset.x, +handle.dataset.y).matrixTransform(to);
      const far = Math.hypot(at.x - x, at.y - y);
      if (!best || far < best.far) best = { handle: handle.dataset.handle, far };
    }
    return best?.handle;
  }

  const mark = () => {
    for (const handle of root.querySelectorAll('[data-handle]')) handle.classList.toggle('held', handle.dataset.handle === drag?.handle);
  };

  root.addEventListener('pointerdown', event => {
    const svg = event.target.closest?.('svg.handles');
    if (drag || !svg || !event.isPrimary || event.button !== 0 || !event.target.closest('[data-handle]')) return;
    const handle = nearest(svg, event.clientX, event.clientY);
    if (!handle) return;
    event.preventDefault();
    if (performance.getEntriesByName('balance-drag').length > 1000) performance.clearMeasures('balance-drag');
    root.setPointerCapture(event.pointerId);
    drag = {
      id: event.pointerId, handle, scale: 1 / svg.getScreenCTM().a, x: event.clientX, y: event.clientY,
      latest: null, busy: null, isOver: false,
    };
    drag.busy = page.invokeMethodAsync('Begin', handle, svg.dataset.surface).finally(() => { if (drag) { drag.busy = null; next(); } });
    mark();
  });

  root.addEventListener('pointermove', event => {
    if (!drag || event.pointerId !== drag.id || drag.isOver) return;
    drag.latest = { right: (event.clientX - drag.x) * drag.scale, down: (event.clientY - drag.y) * drag.scale, time: event.timeStamp };
    frame ||= requestAnimationFrame(() => { frame = 0; next(); });
  });

  async function next() {
    if (!drag || drag.busy || (!drag.latest && !drag.isOver)) return;
    const { handle, latest } = drag;
    drag.latest = null;
    const message = latest ? page.invokeMethodAsync('Drag', handle, latest.right, latest.down) : page.invokeMethodAsync('End');
    if (!latest) drag = null; else drag.busy = message;
    try {
      await message;
      if (latest) performance.measure('balance-drag', { start: latest.time, end: performance.now() });
    } catch {
      // The connection is gone: the page says so itself.
      drag = null;
    }
    mark();
    if (drag && latest) {
      drag.busy = null;
      next();
    }
  }

  const over = event => {
    if (!drag || event.pointerId !== drag.id) return;
    drag.isOver = true;
    next();
  };
  root.addEventListener('pointerup', over);
  root.addEventListener('pointercancel', over);
  // A finger on a handle drags; anywhere else it scrolls the page.
  root.addEventListener('touchstart', event => {
    if (event.target.closest?.('[data-handle]')) event.preventDefault();
  }, { passive: false });
}
