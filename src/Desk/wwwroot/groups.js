// Dragging names between groups, moving them by number keys, and the keys of the table below. What a step means the program knows; here it is only carried to it.

export function attach(rootId, page) {
  const root = document.getElementById(rootId);
  if (!root || root.dataset.live) return;
  root.dataset.live = 'true';

  const reach = 6;       // px before a press is a drag
  const edge = 60;       // px from the window's edge where it scrolls along
  const patience = 700;  // ms in which a second digit belongs to the first

  let drag = null;       // pupil, pointer, where it began, the ghost
  let ended = 0;         // when the last drag ended: its click opens nothing

  const call = async (name, ...values) => {
    try {
      await page.invokeMethodAsync(name, ...values);
      return true;
    } catch {
      // The connection is gone: the page says so itself.
      return false;
    }
  };
  const cardAt = (x, y) => document.elementFromPoint(x, y)?.closest('[data-group]');
  const focusPupil = id => root.querySelector(`[data-pupil="${id}"] .who`)?.focus();

  root.addEventListener('pointerdown', event => {
    const item = event.target.closest?.('[data-pupil]');
    if (drag || !item || !event.isPrimary || event.button !== 0 || event.target.closest('.lock, .group-moves')) return;
    // A finger scrolls by names and drags by the grip.
    if (event.pointerType !== 'mouse' && !event.target.closest('.grip')) return;
    if (event.pointerType !== 'mouse') event.preventDefault();
    drag = { pupil: item.dataset.pupil, item, id: event.pointerId, x: event.clientX, y: event.clientY, ghost: null, over: null };
  });

  const follow = event => {
    if (!drag.ghost) {
      drag.ghost = document.createElement('div');
      drag.ghost.className = 'group-ghost';
      drag.ghost.textContent = drag.item.querySelector('.who').textContent;
      document.body.append(drag.ghost);
      document.documentElement.classList.add('dragging');
      drag.item.classList.add('held');
    }
    drag.ghost.style.left = `${event.clientX}px`;
    drag.ghost.style.top = `${event.clientY}px`;
    if (event.clientY < edge) window.scrollBy(0, -12);
    if (event.clientY > innerHeight - edge) window.scrollBy(0, 12);
    const card = cardAt(event.clientX, event.clientY);
    if (card === drag.over) return;
    drag.over?.classList.remove('over');
    card?.classList.add('over');
    drag.over = card;
  };

  const end = async isDropped => {
    const { pupil, item, ghost, over } = drag;
    drag = null;
    ghost?.remove();
    over?.classList.remove('over');
    item.classList.remove('held');
    document.documentElement.classList.remove('dragging');
    if (!ghost) return;
    ended = performance.now();
    if (isDropped && over) await call('Move', pupil, +over.dataset.group);
  };

  window.addEventListener('pointermove', event => {
    if (!drag || event.pointerId !== drag.id) return;
    if (drag.ghost || Math.hypot(event.clientX - drag.x, event.clientY - drag.y) > reach) follow(event);
  });
  window.addEventListener('pointerup', event => { if (drag && event.pointerId === drag.id) end(true); });
  window.addEventListener('pointercancel', event => { if (drag && event.pointerId === drag.id) end(false); });
  root.addEventListener('click', event => {
    if (performance.now() - ended > 50 || !event.target.closest('[data-pupil]')) return;
    event.preventDefault();
    event.stopPropagation();
  }, true);

  // Chosen from the list under a name, the name moves and its buttons go: the focus stays with the name.
  root.addEventListener('click', event => {
    const choice = event.target.closest('.group-moves button');
    if (!choice) return;
    const { pupil } = choice.closest('[data-pupil]').dataset;
    const seen = new MutationObserver(() => { if (document.activeElement === document.body) focusPupil(pupil); });
    seen.observe(root, { childList: true, subtree: true });
    setTimeout(() => seen.disconnect(), 2 * patience);
  });

  // A number moves who has the focus. With ten groups and more a digit waits for a second one, where there can be one.
  let digits = '';
  let timer = 0;
  const moveByKeys = async pupil => {
    clearTimeout(timer);
    const group = +digits;
    digits = '';
    if (group < 1 || group > +root.dataset.count) return;
    if (await call('Move', pupil, group)) focusPupil(pupil);
  };

  function keyOnName(event, pupil) {
    if (event.key === 'Escape' && drag) return end(false);
    if (!/^[0-9]$/.test(event.key) || (digits === '' && event.key === '0')) return;
    event.preventDefault();
    digits += event.key;
    clearTimeout(timer);
    if (+digits * 10 > +root.dataset.count || digits.length > 1) moveByKeys(pupil);
    else timer = setTimeout(() => moveByKeys(pupil), patience);
  }

  // 0 to 3 says it and goes on to the next pupil; a letter ticks support; up and down change the pupil.
  function keyInTable(event, row) {
    const go = to => { if (to) (to.querySelector('input[type="radio"]:checked') ?? to.querySelector('input')).focus(); };
    if (/^[0-3]$/.test(event.key)) {
      row.querySelector(`input[type="radio"][value="${event.key}"]`)?.click();
      go(row.nextElementSibling);
    } else if (event.key.toLowerCase() === root.dataset.supportKey.toLowerCase()) row.querySelector('input[type="checkbox"]')?.click();
    else if (event.key === 'ArrowDown') go(row.nextElementSibling);
    else if (event.key === 'ArrowUp') go(row.previousElementSibling);
    else return;
    event.preventDefault();
  }

  root.addEventListener('keydown', event => {
    const isTyping = event.target.matches('input:not([type="radio"], [type="checkbox"]), select, textarea');
    if ((event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === 'z' && !isTyping) {
      event.preventDefault();
      call('Undo');
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey || isTyping) return;
    const pupil = event.target.closest('[data-pupil]');
    if (pupil && event.target.matches('.who')) return keyOnName(event, pupil.dataset.pupil);
    const row = event.target.closest('[data-known]');
    if (row) keyInTable(event, row);
  });
}
