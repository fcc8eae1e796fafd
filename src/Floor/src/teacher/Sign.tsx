const paths = {
  clock: "M12 3.5a8.5 8.5 0 1 0 0 17 8.5 8.5 0 0 0 0-17zM12 7.5V12l3.2 2.2",
  device: "M7 3h10a1 1 0 0 1 1 1v16a1 1 0 0 1-1 1H7a1 1 0 0 1-1-1V4a1 1 0 0 1 1-1zM11 18h2",
  flag: "M6 21V4M6 5h12l-3 4 3 4H6",
  find: "M10.5 4a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13zM15.5 15.5 20.5 20.5",
  register: "M5 4h14v16H5zM8.5 9l1.5 1.5L12.5 8M8.5 15l1.5 1.5 2.5-2.5M15 9.5h1M15 15.5h1",
  sort: "M7 5v14M4 16l3 3 3-3M13 7h7M13 12h5M13 17h3",
  eye: "M2.5 12S6 5.5 12 5.5 21.5 12 21.5 12 18 18.5 12 18.5 2.5 12 2.5 12zM12 9.2a2.8 2.8 0 1 0 0 5.6 2.8 2.8 0 0 0 0-5.6z",
  speak: "M12 3.5a2.5 2.5 0 0 1 2.5 2.5v5a2.5 2.5 0 0 1-5 0V6A2.5 2.5 0 0 1 12 3.5zM6 11a6 6 0 0 0 12 0M12 17v3.5",
  pen: "M4 20l1-4L16.5 4.5l3 3L8 19z",
  lock: "M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 0 1 7 0v3",
  go: "M8 5l10 7-10 7z",
} as const;

export type SignName = keyof typeof paths;

/** A drawn sign of the teacher's phone; words stand beside it. */
export function Sign({ name }: { readonly name: SignName }) {
  return (
    <svg class="mark" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={paths[name]} />
    </svg>
  );
}
