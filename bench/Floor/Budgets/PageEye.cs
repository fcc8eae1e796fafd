namespace Slantwise.Bench.Floor.Budgets;

/// <summary>What looks at a page from inside, put there before its own script.</summary>
internal static class PageEye
{
    /// <remarks>
    /// A frame counts as painted when a message posted from its animation callback arrives: the browser has then done style, layout and paint of that frame.
    /// The eye looks at what a style comes out as, not at how it was written.
    /// </remarks>
    public const string Script = """
        (() => {
          if (globalThis.eye) return;
          const painted = (then) => requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => then(performance.now());
            port2.postMessage(0);
          });
          const eye = globalThis.eye = { taps: [], step: () => document.querySelector(".page")?.dataset.step ?? "" };
          eye.usable = new Promise((done) => {
            const isThere = () => {
              const field = document.querySelector("#code");
              return field ? !field.disabled : document.querySelector(".frame .page button, .frame .page input");
            };
            const watch = new MutationObserver(() => {
              if (!isThere()) return;
              watch.disconnect();
              painted(done);
            });
            watch.observe(document, { childList: true, subtree: true });
          });
          const looks = (e) => { const { transform, backgroundColor, boxShadow, borderTopColor } = getComputedStyle(e); return [transform, backgroundColor, boxShadow, borderTopColor].join("|"); };
          const target = (e) => e.target?.closest?.(".button, .card, .answer, .start");
          let before, waiting, resting = "";
          eye.aim = (x, y) => { before = document.elementFromPoint(x, y)?.closest(".button, .card, .answer, .start"); resting = before ? looks(before) : ""; return before !== null && before !== undefined; };
          document.addEventListener("pointerdown", (event) => {
            const on = target(event), tap = { downMs: event.timeStamp, from: eye.step() };
            if (!on) return;
            // What the tap before it has not moved by now, it did not move.
            waiting?.disconnect();
            eye.taps.push(tap);
            const look = () => {
              if (tap.shownMs !== undefined) return;
              if (!on.isConnected || looks(on) !== resting) {
                const { port1, port2 } = new MessageChannel();
                port1.onmessage = () => (tap.shownMs ??= performance.now());
                port2.postMessage(0);
              } else if (performance.now() - tap.downMs < 2000) requestAnimationFrame(look);
            };
            requestAnimationFrame(look);
          }, true);
          document.addEventListener("click", (event) => {
            const tap = eye.taps.at(-1);
            if (!tap || tap.clickMs !== undefined || !target(event)) return;
            tap.clickMs = event.timeStamp;
            const watch = (waiting = new MutationObserver(() => {
              if (eye.step() === tap.from) return;
              watch.disconnect();
              painted((at) => (tap.nextMs = at));
            }));
            watch.observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ["data-step"] });
          }, true);
          /** Where a finger goes next to get through a sheet; once something was chosen on a page, its main button. */
          eye.next = () => {
            const step = eye.step(), all = (s) => [...document.querySelectorAll(s)].filter((e) => !e.disabled);
            const kind = step.split("-")[0];
            const chosen = all(".card[data-chosen]").length > 0;
            const pick = {
              who: () => all(".choice .card")[eye.turn++ % all(".choice .card").length],
              task: () => all(".card.task").at(-1),
              level: () => chosen ? all(".page-foot .button.main")[0] : all(".choice .card")[0],
              predict: () => all(".choice.counts .card")[2] ?? (chosen ? all(".page-foot .button.main")[0] : all(".choice .card")[1]),
              try: () => all(".hold").length > 0 ? all(".page-foot .button.quiet:not([aria-pressed])")[0] : all(".choice.wide .card")[0],
              look: () => all(".row-cue").filter((cue) => !cue.querySelector("[aria-pressed=true]")).map((cue) => cue.querySelector(".answer"))[0] ?? all(".page-foot .button")[0],
              decide: () => all(".choice.wide .card")[0],
              why: () => all(".reasons .card")[0],
              mine: () => all(".page-top .who .button")[0] ?? all(".page-foot .button")[0],
            }[kind]?.() ?? all(".reasons .card")[0] ?? all(".choice.wide .card")[0];
            if (!pick) return null;
            pick.scrollIntoView({ block: "center", behavior: "instant" });
            const box = pick.getBoundingClientRect();
            return [box.left + box.width / 2, box.top + box.height / 2];
          };
          eye.turn = 0;
        })();
        """;
}
