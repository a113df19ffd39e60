import type { Rig } from '../analysis/report';
import type { Limits } from '../grading/limits';
import type { MaterialName } from '../grading/materials';
import type { Step } from '../grading/steps';
import type { RecordId } from '../journal/records';
import type { PlanSettings } from '../recipes/planSettings';
import type { Units } from '../recipes/units';
import type { Language } from '../texts/languages';

/** What a person chose; everything here is remembered across visits. */
export interface Settings {
  readonly step: Step;
  /** Null for a mixed tray, or when the person is not sure. */
  readonly material: MaterialName | null;
  readonly limits: Limits;
  /** Diameter of the reference ball, mm. */
  readonly ballMm: number;
  /** True when no ball lies in the tray and the remembered rig is to be used. */
  readonly noBall: boolean;
  /** Lamp and camera that the person had remembered, from a photo with the ball. */
  readonly rig: Rig | null;
  /** Day on which that was, such as 2026-10-03; null when it is not known. */
  readonly rigDay: string | null;
  readonly cautionsSeen: boolean;
  /** Newest record that lay in the journal when it was last saved to a file; null when it never was. */
  readonly savedUpTo: RecordId | null;
  /** Own recipes, grit on hand and the wash-out under way. */
  readonly plan: PlanSettings;
  readonly units: Units;
  /** Null for the browser's. */
  readonly language: Language | null;
}
