import type { LessonBundle } from "../contracts";
import type { PupilSheet } from "../lesson/pupilSheet";
import type { Session } from "./session";

/** What every page of a pupil gets. */
export interface PupilView {
  readonly session: Session;
  /** In the language of the device, as far as it is translated. */
  readonly bundle: LessonBundle;
  readonly sheet: PupilSheet;
  readonly name: string;
  readonly isPartner: boolean;
  /** The lesson has ended: there is only the own page, and nothing changes. */
  readonly isOver: boolean;
  readonly onLeave?: () => void;
}
