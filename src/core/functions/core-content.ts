/** What the functions that flow files call are bound to, read once at the start. */
import type { BrewingData } from '../brewing/brewing-data.ts';
import type { Listen } from '../lessons/spoken/sentence.ts';
import type { SeatChangeReader } from '../lessons/spoken/seat-change.ts';
import type { WithoutCourtesies } from '../reading/typed/courtesies.ts';
import type { Reader } from '../reading/reading.ts';
import type { TalkCues } from '../talk/talk-cues.ts';
import type { Tea } from '../teas/tea.ts';

export interface CoreContent {
  readonly teas: readonly Tea[];
  readonly brewing: BrewingData;
  readonly read: Reader;
  readonly withoutCourtesies: WithoutCourtesies;
  readonly seatChange: SeatChangeReader;
  /** What people here say of lessons, heard in their sentences. */
  readonly listen: Listen;
  readonly talkCues: TalkCues;
  /** The shop's time zone. */
  readonly zone: string;
}
