// A browser holds `:active` back under a finger until it knows that the finger does not scroll: a tenth of a second and more, or until it is lifted.
// What is touched shows at once; where it turns out to scroll, the browser takes the pointer away and it rests again.
let pressed: Element | undefined;

const rest = () => {
  pressed?.removeAttribute("data-pressed");
  pressed = undefined;
};

if (typeof document !== "undefined") {
  document.addEventListener(
    "pointerdown",
    ({ target }) => {
      rest();
      pressed = (target as Element | null)?.closest?.(".button, .card, .start, .tile, .key") ?? undefined;
      pressed?.setAttribute("data-pressed", "");
    },
    { capture: true, passive: true },
  );
  for (const end of ["pointerup", "pointercancel"] as const) document.addEventListener(end, rest, { capture: true, passive: true });
}
