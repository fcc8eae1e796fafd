namespace Slantwise.Surface.Tests.Floor;

/// <summary>What a test's finger and eye are made of, put into every page before its own script.</summary>
/// <remarks>
/// A tap goes to what lies on top at the middle of its target, as a finger's does: what is covered cannot be tapped. It is repeated as long as the page has not moved on,
/// since pages let a tap pass that follows another too soon; a target is named within its step, so that a repeated tap never lands on the next page.
/// The device's clock is <c>walk.skew(ms)</c> away from the machine's, also after a reload.
/// </remarks>
internal static class FloorScript
{
    public const string Text = """
        (() => {
          if (globalThis.walk) return;
          const Real = Date;
          let skewMs = 0;
          try { skewMs = Number(localStorage.getItem("walk.skewMs") ?? 0); } catch { /* A page without storage has the machine's clock. */ }
          globalThis.Date = class extends Real {
            constructor(...given) { if (given.length === 0) super(Real.now() + skewMs); else super(...given); }
            static now() { return Real.now() + skewMs; }
          };
          const patienceMs = 170_000, lookMs = 20, betweenTapsMs = 130;
          const pause = (ms) => new Promise((done) => setTimeout(done, ms));
          const page = () => document.querySelector(".page");
          const step = () => document.querySelector(".hold-face") ? "holding" : (page()?.dataset.step ?? "");
          const face = () => document.querySelector(".frame")?.dataset.face ?? "pupil";
          const found = (selector, nth = 0) => document.querySelectorAll(selector)[nth];

          const tap = (element) => {
            if (!element || element.disabled) return false;
            element.scrollIntoView({ block: "center", inline: "nearest", behavior: "instant" });
            const box = element.getBoundingClientRect();
            const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
            const top = document.elementFromPoint(x, y);
            if (!top || !(element.contains(top) || top.contains(element) && element.control)) return false;
            const how = { bubbles: true, cancelable: true, clientX: x, clientY: y, pointerId: 1, isPrimary: true, button: 0, pointerType: "touch" };
            top.dispatchEvent(new PointerEvent("pointerdown", how));
            top.dispatchEvent(new PointerEvent("pointerup", how));
            top.dispatchEvent(new MouseEvent("click", how));
            return true;
          };

          const until = async (isSo, what, again) => {
            const end = performance.now() + patienceMs;
            let tappedAt = -Infinity;
            for (;;) {
              const answer = isSo();
              if (answer) return answer;
              const now = performance.now();
              if (now > end) throw new Error(`Waited in vain: ${what}; the page is at ${step()}: ${document.body.innerText.slice(0, 300)}`);
              if (again && now - tappedAt > betweenTapsMs && again()) tappedAt = performance.now();
              await pause(lookMs);
            }
          };

          let database;
          const disk = async () => database ??= await new Promise((done, fail) => {
            const opening = indexedDB.open("slantwise-floor");
            opening.onsuccess = () => done(opening.result);
            opening.onerror = () => fail(opening.error);
          });
          const all = async (store, index, range) => {
            const source = (await disk()).transaction(store).objectStore(store);
            const asked = (index ? source.index(index) : source).getAll(range);
            return new Promise((done, fail) => { asked.onsuccess = () => done(asked.result); asked.onerror = () => fail(asked.error); });
          };

          const walk = {
            skew: (ms) => { skewMs = ms; localStorage.setItem("walk.skewMs", String(ms)); },
            step,
            at: (wanted) => until(() => wanted.includes(step()) || undefined, `one of ${wanted}`).then(step),
            moved: (from) => until(() => step() !== from && step() !== "" || undefined, `away from ${from}`).then(step),
            count: (selector) => document.querySelectorAll(selector).length,
            texts: (selector) => [...document.querySelectorAll(selector)].map((e) => e.innerText.trim()),
            tap: (selector, nth = 0) => until(() => tap(found(selector, nth)) || undefined, `to tap ${selector} ${nth}`),
            until: (selector, nth = 0) => until(() => found(selector, nth) !== undefined || undefined, `${selector} ${nth}`),
            gone: (selector) => until(() => document.querySelector(selector) === null || undefined, `${selector} to go`),
            /** Taps until something is there. */
            for: (selector, nth, wanted) => until(() => document.querySelector(wanted) !== null || undefined, `${wanted} by ${selector}`, () => tap(found(selector, nth))),
            /** Taps until something is gone. */
            away: (selector, wanted) => until(() => document.querySelector(wanted) === null || undefined, `${wanted} to go by ${selector}`, () => tap(found(selector))),
            /** Taps until something says what it should. */
            says: (selector, nth, where, text) => until(() => found(where)?.innerText.trim() === text || undefined, `${where} to say ${text}`, () => tap(found(selector, nth))),
            /** Taps until the page has moved on from this step. */
            on: (selector, nth = 0) => {
              const from = step();
              return until(() => step() !== from && step() !== "" || undefined, `on from ${from} by ${selector} ${nth}`, () => step() === from && tap(found(selector, nth))).then(step);
            },
            /** Whether the page moves on within a moment. */
            soon: async (from) => {
              for (let looks = 0; looks < 8; looks++) {
                if (step() !== from && step() !== "") return true;
                await pause(lookMs);
              }
              return false;
            },
            /** Waits until another code is drawn. */
            drawn: (before) => until(() => found(".chain-code path")?.getAttribute("d") !== before || undefined, "another code"),
            /** Chooses a card of a group, and sees it chosen. */
            card: (selector, nth) => until(() => found(selector, nth)?.hasAttribute("data-chosen") || undefined, `${selector} ${nth} chosen`, () => tap(found(selector, nth))),
            /** Answers a cue, and sees it answered. */
            answer: (cue, isTicked) => {
              const key = () => document.querySelectorAll(`.cues > :nth-child(${cue}) .answer`)[isTicked ? 0 : 1];
              return until(() => key()?.getAttribute("aria-pressed") === "true" || undefined, `cue ${cue} answered`, () => tap(key()));
            },
            fill: (selector, text) => {
              const field = found(selector);
              field.value = text;
              field.dispatchEvent(new Event("input", { bubbles: true }));
            },
            /** Takes a step back: until something was written, another page shows, or there is nothing to take back. */
            undo: async (deviceId, known) => {
              const key = () => found(".page-top > .button:last-child");
              const from = step();
              await walk.gone(".button[data-busy]");
              while (key() && !key().disabled && step() === from && (await walk.sequence(deviceId)) === known) {
                if (!key().hasAttribute("data-busy")) tap(key());
                await pause(betweenTapsMs);
              }
              await walk.gone(".button[data-busy]");
            },
            standing: () => [...document.querySelectorAll(".cues > *")].map((li) => [...li.querySelectorAll(".answer")].findIndex((a) => a.getAttribute("aria-pressed") === "true")),
            /** What of the page's text is cut off or runs off its side. */
            cut: () => {
              const faults = [], wide = document.documentElement.clientWidth, words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
              for (let node = words.nextNode(); node; node = words.nextNode()) {
                const own = node.parentElement;
                if (!node.data.trim() || own.closest(".unseen, svg, script, style, textarea, select")) continue;
                const range = document.createRange();
                range.selectNodeContents(node);
                const box = range.getBoundingClientRect();
                if (box.width === 0 || getComputedStyle(own).visibility === "hidden") continue;
                if (box.right > wide + 1 || box.left < -1) faults.push(`“${node.data.trim().slice(0, 40)}” runs off the side, ${Math.round(box.left)} to ${Math.round(box.right)} of ${wide}`);
                for (let around = own; around !== document.body && around; around = around.parentElement) {
                  const { overflowX, position } = getComputedStyle(around), edge = around.getBoundingClientRect();
                  if ((overflowX === "hidden" || overflowX === "clip") && (box.right > edge.right + 2 || box.left < edge.left - 2)) faults.push(`“${node.data.trim().slice(0, 40)}” is cut by .${around.className}`);
                  if (position === "fixed") break;
                }
              }
              return [...new Set(faults)];
            },
            lesson: async () => (await all("lessons")).find((l) => l.isOpen && l.face === face()),
            /** The device's number so far. */
            sequence: async (deviceId) => (await all("counters")).find((c) => c.deviceId === deviceId)?.lastSequence ?? 0,
            /** What this device has on its disk after a number. */
            after: async (deviceId, known) => (await all("entries", "byDevice", IDBKeyRange.bound([deviceId, known], [deviceId, Infinity], true))).map((k) => k.entry),
            /** Everything on the disk, as text. */
            disk: async () => JSON.stringify(Object.fromEntries(await Promise.all(["lessons", "bundles", "entries", "given"].map(async (s) => [s, await all(s)])))),
            counts: async () => Promise.all(["lessons", "bundles", "entries", "given"].map(async (s) => (await all(s)).length)),
          };
          globalThis.walk = walk;
        })();
        """;
}
