/** The version of these pages, twelve digits of what their sources say; "0" while they are being written. */
declare const __FLOOR_VERSION__: string;
