const paths = {
  back: "M20 12H5M11 6l-6 6 6 6",
  caution: "M12 4 2.5 20h19zM12 10v4M12 17.2v.1",
  check: "M4 12.5 10 18 20 6",
  circle: "M12 4a8 8 0 1 0 0 16 8 8 0 0 0 0-16z",
  easier: "M12 5v14M6 13l6 6 6-6",
  harder: "M12 19V5M6 11l6-6 6 6",
  hear: "M4 9.5v5h3.5L12 18.5v-13L7.5 9.5zM15.5 9a4 4 0 0 1 0 6M18 6.5a8 8 0 0 1 0 11",
  minus: "M5 12h14",
  next: "M4 12h15M13 6l6 6-6 6",
  page: "M6 3h9l4 4v14H6zM9.5 11h6M9.5 15h6",
  pen: "M4 20l1-4.5L16 4.5l3.5 3.5L8.5 19zM13.5 7l3.5 3.5",
  people: "M8.5 11a3 3 0 1 0 0-6 3 3 0 0 0 0 6zM3 19c0-3 2.5-5 5.5-5s5.5 2 5.5 5M16 11a2.6 2.6 0 1 0-1.5-4.7M16.5 14c2.6 0 4.5 2 4.5 5",
  plus: "M12 5v14M5 12h14",
  same: "M5 9h14M5 15h14",
  undo: "M8 5 4 9l4 4M4 9h9a6 6 0 0 1 0 12h-3",
} as const;

export type MarkName = keyof typeof paths;

/** A drawn sign. It says nothing by itself: words stand beside it, or on the button around it. */
export function Mark({ name }: { readonly name: MarkName }) {
  return (
    <svg class="mark" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={paths[name]} />
    </svg>
  );
}
