"use client";
import { useEffect, useRef } from "react";
import { timecode } from "#lib/time/index.ts";
import type { Picture } from "./picture.ts";

/** Seconds between long ticks that a person reads easily. */
const steps = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800, 3600];
/** How far apart long ticks should stand at least, in CSS pixels. */
const TICK_ROOM = 70;
/** How much of a recording the scale shows at most, in seconds. */
const WINDOW = 150;

interface Drawing {
  context: CanvasRenderingContext2D;
  width: number;
  height: number;
  ink: string;
  soft: string;
  rule: string;
  paper: string;
}

/**
 * The recording's own time as a drawing-office scale down the edge of the sheet, with a bar where each mark
 * lies and a line at the moment that is shown. Pressing it goes to that moment; the keys do the same.
 */
export function Scale({
  picture,
  duration,
  moments,
  proposed,
  inHand,
}: {
  picture: Picture | null;
  duration: number;
  /** Moments of the marks on this recording, ascending, in seconds of its clock. */
  moments: readonly number[];
  /** Moments of drafts, drawn as outlines. */
  proposed: readonly number[];
  inHand: number | null;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const latest = useRef({ picture, duration, moments, proposed, inHand });
  latest.current = { picture, duration, moments, proposed, inHand };
  const asked = useRef(0);
  useEffect(() => {
    const draw = () => {
      if (asked.current) return;
      asked.current = requestAnimationFrame(() => {
        asked.current = 0;
        if (canvas.current) drawScale(canvas.current, latest.current);
      });
    };
    draw();
    const stop = picture?.watch(draw);
    const resized = new ResizeObserver(draw);
    if (canvas.current) resized.observe(canvas.current);
    return () => {
      stop?.();
      resized.disconnect();
      cancelAnimationFrame(asked.current);
      asked.current = 0;
    };
  }, [picture]);
  useEffect(() => {
    if (canvas.current) drawScale(canvas.current, { picture, duration, moments, proposed, inHand });
  });
  return (
    <div
      className="scale"
      aria-hidden="true"
      onPointerDown={(event) => {
        if (!picture || !canvas.current) return;
        const box = canvas.current.getBoundingClientRect();
        const { from, seconds } = shownWindow(now(picture), duration);
        picture.goTo(
          Math.min(Math.max(from + ((event.clientY - box.top) / box.height) * seconds, 0), duration),
        );
      }}
    >
      <canvas ref={canvas} />
    </div>
  );
}

function now(picture: Picture | null): number {
  return picture ? picture.moment() : 0;
}

/** The stretch of the recording that the scale shows: all of a short one, else a window around the moment. */
function shownWindow(moment: number, duration: number): { from: number; seconds: number } {
  const seconds = Math.min(Math.max(duration, 1), WINDOW);
  const from = Math.min(Math.max(moment - seconds / 2, 0), Math.max(duration - seconds, 0));
  return { from, seconds };
}

function drawScale(
  canvas: HTMLCanvasElement,
  given: {
    picture: Picture | null;
    duration: number;
    moments: readonly number[];
    proposed: readonly number[];
    inHand: number | null;
  },
): void {
  const context = canvas.getContext("2d");
  if (!context) return;
  const ratio = window.devicePixelRatio || 1;
  const { clientWidth: width, clientHeight: height } = canvas;
  if (canvas.width !== Math.round(width * ratio) || canvas.height !== Math.round(height * ratio)) {
    canvas.width = Math.round(width * ratio);
    canvas.height = Math.round(height * ratio);
  }
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, width, height);
  const style = getComputedStyle(canvas);
  const ink = (name: string) => style.getPropertyValue(name);
  const drawing: Drawing = {
    context,
    width,
    height,
    ink: ink("--ink"),
    soft: ink("--soft"),
    rule: ink("--rule"),
    paper: ink("--paper"),
  };
  const moment = now(given.picture);
  const shown = shownWindow(moment, given.duration);
  const at = (seconds: number) => ((seconds - shown.from) / shown.seconds) * height;
  drawTicks(drawing, shown, given.duration, at);
  drawDrafts(drawing, shown, given.proposed, given.inHand, at);
  drawMarks(drawing, shown, given.moments, given.inHand, at);
  if (given.picture) drawNow(drawing, at(moment), moment);
}

function drawTicks(
  { context, width, height, ink, soft, rule }: Drawing,
  { from, seconds }: { from: number; seconds: number },
  duration: number,
  at: (seconds: number) => number,
): void {
  const step = steps.find((one) => (one / seconds) * height >= TICK_ROOM) ?? 3600;
  const fine = step / (step % 4 === 0 || step === 2 ? 4 : 5);
  const end = Math.min(from + seconds, duration);
  context.font = "600 12px 'Source Code Pro', monospace";
  context.textAlign = "right";
  context.textBaseline = "middle";
  for (let tick = Math.ceil(from / fine); tick * fine <= end; tick++) {
    const long = Math.abs((tick * fine) % step) < 1e-6;
    const y = Math.round(at(tick * fine)) + 0.5;
    context.fillStyle = long ? ink : rule;
    context.fillRect(width - (long ? 14 : 8), y - 0.5, long ? 14 : 8, 1);
    if (long && width > 50 && y > 8 && y < height - 8) {
      context.fillStyle = soft;
      context.fillText(timecode(tick * fine, { tenths: false }), width - 18, y);
    }
  }
}

/** Pencil, not ink: an outline that a mark's bar would fill. */
function drawDrafts(
  { context, width, soft }: Drawing,
  { from, seconds }: { from: number; seconds: number },
  proposed: readonly number[],
  inHand: number | null,
  at: (seconds: number) => number,
): void {
  context.strokeStyle = soft;
  context.lineWidth = 1;
  for (const moment of proposed) {
    if (moment < from || moment > from + seconds) continue;
    const height = moment === inHand ? 6 : 4;
    context.strokeRect(width - 8.5, Math.round(at(moment) - height / 2) + 0.5, 8, height);
  }
}

function drawMarks(
  { context, width, ink }: Drawing,
  { from, seconds }: { from: number; seconds: number },
  moments: readonly number[],
  inHand: number | null,
  at: (seconds: number) => number,
): void {
  context.fillStyle = ink;
  for (const moment of moments) {
    if (moment < from || moment > from + seconds) continue;
    const thick = moment === inHand ? 5 : 3;
    context.fillRect(width - 9, at(moment) - thick / 2, 9, thick);
  }
}

function drawNow({ context, width, height, ink, paper }: Drawing, y: number, moment: number): void {
  context.fillStyle = ink;
  context.fillRect(0, y - 1, width, 2);
  if (width < 50) return;
  const label = timecode(moment);
  context.font = "600 12.5px 'Source Code Pro', monospace";
  const box = context.measureText(label).width + 8;
  const top = Math.min(Math.max(y - 22, 0), height - 20);
  context.fillRect(0, top, box, 20);
  context.fillStyle = paper;
  context.textAlign = "left";
  context.textBaseline = "middle";
  context.fillText(label, 4, top + 10.5);
}
