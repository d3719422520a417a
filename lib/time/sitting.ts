/** How a recording's clock lies on its sitting's: sitting time = offset + rate × recording time. */
export interface ClockSetting {
  /** Where the recording begins, in seconds of the sitting's clock. */
  offset: number;
  /** Seconds of sitting time for each second of recording time; 1 until somebody says otherwise. */
  rate: number;
}

/** Recording time to sitting time, both in seconds. */
export function toSittingTime(clock: ClockSetting, moment: number): number {
  return clock.offset + clock.rate * moment;
}

/** Sitting time to recording time, both in seconds. */
export function toRecordingTime(clock: ClockSetting, moment: number): number {
  return (moment - clock.offset) / clock.rate;
}
