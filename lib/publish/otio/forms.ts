/**
 * The forms of OpenTimelineIO that are written, with the schema versions that its releases 0.15 to 0.18 read. Times
 * are seconds here; there they are a value and a rate.
 */
export interface Forms {
  time: (seconds: number) => object;
  range: (start: number, duration: number) => object;
}

export function formsAt(rate: number): Forms {
  const time = (seconds: number) => ({ OTIO_SCHEMA: "RationalTime.1", rate, value: near(seconds * rate) });
  const range = (start: number, duration: number) => ({
    OTIO_SCHEMA: "TimeRange.1",
    start_time: time(start),
    duration: time(duration),
  });
  return { time, range };
}

/** A whole number of frames where it is one but for the rounding of doubles. */
function near(value: number): number {
  const whole = Math.round(value);
  return Math.abs(value - whole) < 1e-6 ? whole : value;
}

export function timeline(name: string, children: object[], markers: object[], metadata: object): object {
  const tracks = {
    OTIO_SCHEMA: "Stack.1",
    name: "tracks",
    source_range: null,
    effects: [],
    markers,
    children,
  };
  return { OTIO_SCHEMA: "Timeline.1", name, global_start_time: null, metadata, tracks };
}

export function track(name: string, children: object[]): object {
  return {
    OTIO_SCHEMA: "Track.1",
    name,
    kind: "Video",
    source_range: null,
    effects: [],
    markers: [],
    children,
  };
}

export function gap(range: object): object {
  return { OTIO_SCHEMA: "Gap.1", name: "", source_range: range, effects: [], markers: [] };
}

/** Offsets: how much of the transition lies before the seam, and how much beyond it. */
export function transition(inOffset: object, outOffset: object): object {
  const transition_type = "SMPTE_Dissolve";
  return {
    OTIO_SCHEMA: "Transition.1",
    name: "",
    transition_type,
    in_offset: inOffset,
    out_offset: outOffset,
  };
}

export interface ClipParts {
  name: string;
  url: string;
  range: object | null;
  available: object | null;
  effects: object[];
  markers: object[];
  metadata: object;
}

export function clip({ name, url, range, available, effects, markers, metadata }: ClipParts): object {
  return {
    OTIO_SCHEMA: "Clip.2",
    name,
    source_range: range,
    effects,
    markers,
    metadata,
    media_references: {
      DEFAULT_MEDIA: {
        OTIO_SCHEMA: "ExternalReference.1",
        name,
        target_url: url,
        available_range: available,
      },
    },
    active_media_reference_key: "DEFAULT_MEDIA",
  };
}

export function speedEffect(speed: number): object[] {
  if (speed === 1) return [];
  if (speed === 0)
    return [{ OTIO_SCHEMA: "FreezeFrame.1", name: "", effect_name: "FreezeFrame", time_scalar: 0 }];
  return [{ OTIO_SCHEMA: "LinearTimeWarp.1", name: "", effect_name: "LinearTimeWarp", time_scalar: speed }];
}

export function marker(name: string, range: object, color: string, metadata: object): object {
  return { OTIO_SCHEMA: "Marker.2", name, marked_range: range, color, metadata };
}
