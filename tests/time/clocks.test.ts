import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  clockFromMoments,
  gapsBetween,
  readTimecode,
  sayWallSpan,
  timecode,
  toRecordingTime,
  toSittingTime,
} from "#lib/time/index.ts";

// NIST/ITL Statistical Reference Datasets, linear least squares, "Norris": sitting, recording.
const norris = `0.1 0.2  338.8 337.4  118.1 118.2  888.0 884.6  9.2 10.1  228.1 226.5  668.5 666.3  998.5 996.3
 449.1 448.6  778.9 777.0  559.2 558.2  0.3 0.4  0.1 0.6  778.1 775.5  668.8 666.9  339.3 338.0  448.9 447.5
 10.8 11.6  557.7 556.0  228.3 228.1  998.0 995.8  888.8 887.6  119.6 120.2  0.3 0.3  0.6 0.3  557.6 556.8
 339.3 339.1  888.0 887.2  998.5 999.0  778.9 779.0  10.2 11.1  117.6 118.3  228.9 229.2  668.4 669.1
 449.2 448.9  0.2 0.5`;

function pairsOf(table: string) {
  const numbers = table.trim().split(/\s+/).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, index) => ({
    sitting: numbers[2 * index] as number,
    recording: numbers[2 * index + 1] as number,
  }));
}

const moment = fc.double({ min: 0, max: 20_000, noNaN: true });

describe("a clock from clear moments", () => {
  test("NIST StRD, Norris: the certified straight line through 36 pairs", () => {
    const fit = clockFromMoments(pairsOf(norris));
    if (!fit.ok) throw new Error("no clock");
    expect(fit.clock.rate).toBeCloseTo(1.00211681802045, 12);
    expect(fit.clock.offset).toBeCloseTo(-0.262323073774029, 11);
    // The largest residual of that fit, from its published list of residuals.
    expect(fit.residual).toBeCloseTo(2.35237812866, 9);
    expect(fit.doubts).toEqual(["rate", "disagree"]);
  });

  test("one moment gives the offset and keeps the rate; two give both, whatever they are", () => {
    const two = fc
      .tuple(moment, moment, moment, fc.double({ min: 0.9, max: 1.1, noNaN: true }))
      .filter(([a, b]) => Math.abs(a - b) > 1);
    fc.assert(
      fc.property(two, ([a, b, offset, rate]) => {
        const clock = { offset, rate };
        const pairs = [a, b].map((recording) => ({ recording, sitting: toSittingTime(clock, recording) }));
        const fit = clockFromMoments(pairs);
        if (!fit.ok) throw new Error("no clock");
        expect(fit.clock.rate).toBeCloseTo(rate, 6);
        expect(toSittingTime(fit.clock, a)).toBeCloseTo(toSittingTime(clock, a), 6);
        expect(fit.doubts.includes("rate")).toBe(Math.abs(fit.clock.rate - 1) > 0.001);
        const one = clockFromMoments(pairs.slice(0, 1), { rate });
        expect(one.ok && one.clock.rate).toBe(rate);
        expect(one.ok && toRecordingTime(one.clock, toSittingTime(clock, a))).toBeCloseTo(a, 6);
      }),
    );
  });

  test("what cannot be a clock is not one", () => {
    expect(clockFromMoments([])).toEqual({ ok: false, why: "no-moment" });
    expect(clockFromMoments([{ recording: Number.NaN, sitting: 1 }])).toEqual({
      ok: false,
      why: "no-moment",
    });
    const twice = { recording: 10, sitting: 20 };
    expect(clockFromMoments([twice, twice])).toEqual({ ok: false, why: "same-moment" });
    const crossed = [
      { recording: 10, sitting: 200 },
      { recording: 100, sitting: 20 },
    ];
    expect(clockFromMoments(crossed)).toEqual({ ok: false, why: "backwards" });
  });

  test("moments that lie near each other make the rate doubtful, by how far a frame may put it out", () => {
    const apart = (seconds: number) =>
      clockFromMoments(
        [
          { recording: 0, sitting: 5 },
          { recording: seconds, sitting: 5 + seconds },
        ],
        { slip: 0.08 },
      );
    // A slip of 0.08 s at either end of 100 s is 0.16 in 100.
    expect(apart(100)).toMatchObject({ rateSlip: 0.0016, doubts: ["too-near"] });
    expect(apart(200)).toMatchObject({ rateSlip: 0.0008, doubts: [] });
  });
});

describe("gaps", () => {
  test("no gap is covered, every moment between is in a gap or a span, and none is outside", () => {
    const span = fc.tuple(moment, moment).map(([a, b]) => ({ start: Math.min(a, b), end: Math.max(a, b) }));
    fc.assert(
      fc.property(fc.array(span, { maxLength: 12 }), moment, (spans, at) => {
        const gaps = gapsBetween(spans);
        const inside = (one: { start: number; end: number }) => one.start <= at && at < one.end;
        const first = Math.min(...spans.map((one) => one.start));
        const last = Math.max(...spans.map((one) => one.end));
        const between = spans.length > 0 && at >= first && at < last;
        expect(gaps.some(inside)).toBe(between && !spans.some(inside));
        expect([...gaps].sort((a, b) => a.start - b.start)).toEqual(gaps);
      }),
    );
  });

  test("shorter ones are left out", () => {
    const spans = [
      { start: 0, end: 100 },
      { start: 159, end: 200 },
      { start: 260, end: 300 },
    ];
    expect(gapsBetween(spans, 60)).toEqual([{ start: 200, end: 260 }]);
  });
});

describe("moments as they are typed", () => {
  test.each([
    ["14:08", 848],
    ["1:02:03.4", 3723.4],
    ["72.5", 72.5],
    ["0:00,04", 0.04],
    ["−0:03", -3],
    ["75:00", 4500],
    ["1:75", null],
    ["1:60:00", null],
    ["12.3.4", null],
    ["", null],
    ["noon", null],
    ["1e3", null],
  ])("%j is %j", (text, seconds) => {
    expect(readTimecode(text)).toBe(seconds);
  });

  test("what is printed is read back to its tenth", () => {
    fc.assert(
      fc.property(fc.integer({ min: -400_000, max: 400_000 }), (tenths) => {
        expect(readTimecode(timecode(tenths / 10))).toBeCloseTo(tenths / 10, 9);
      }),
    );
  });

  test("a stretch of the wall clock names its days where it passes midnight", () => {
    const at = (iso: string) => Date.parse(iso);
    expect(sayWallSpan(at("2026-05-03T14:02:00Z"), at("2026-05-03T14:31:59Z"))).toBe("14:02 to 14:31");
    expect(sayWallSpan(at("2026-05-03T22:30:00Z"), at("2026-05-04T00:10:00Z"))).toBe(
      "3 May 22:30 to 4 May 00:10",
    );
    // IANA time zone database: Berlin is two hours ahead of UTC in May.
    expect(sayWallSpan(at("2026-05-03T12:02:00Z"), at("2026-05-03T12:31:00Z"), "Europe/Berlin")).toBe(
      "14:02 to 14:31",
    );
  });
});
