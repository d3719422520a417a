"use client";
import { useEffect, useRef, useState } from "react";
import type VideoJsPlayer from "video.js/dist/types/player";
import type { CaptionTrack, Recording } from "#lib/build/index.ts";
import { toWebVtt } from "#lib/captions/index.ts";
import { decodeFrames } from "#lib/media/frames-bytes.ts";
import { captionsOf } from "./drafts.ts";
import { Picture } from "./picture.ts";

/** The address of a recording's bytes; of a copy that plays, where one was made. */
export function recordingAddress(id: string): string {
  return `/media/recordings/${encodeURIComponent(id)}`;
}

/** What the browser is told the file is: QuickTime with H.264 plays, though it says that it does not. */
function typeOf(name: string): string {
  return /\.(webm|mkv)$/i.test(name) ? "video/webm" : "video/mp4";
}

/**
 * The picture set into the sheet. `onPicture` is given the picture when it is there, and null when it goes; `onFailed`
 * is called when the film's bytes do not come.
 */
export function Player({
  recording,
  captions,
  onPicture,
  onFailed,
}: {
  recording: Recording;
  /** What is said in it, on its own clock; shown in the picture when `shown`. */
  captions: { track: CaptionTrack; shown: boolean } | null;
  onPicture: (picture: Picture | null) => void;
  onFailed: () => void;
}) {
  const place = useRef<HTMLDivElement>(null);
  const [player, setPlayer] = useState<VideoJsPlayer | null>(null);
  const { id, name } = recording;
  useEffect(() => {
    let player: VideoJsPlayer | null = null;
    let picture: Picture | null = null;
    let current = true;
    const begin = async () => {
      // video.js would write a style sheet into the page; the sheet has its own.
      (window as { VIDEOJS_NO_DYNAMIC_STYLE?: boolean }).VIDEOJS_NO_DYNAMIC_STYLE = true;
      const { default: videojs } = await import("video.js/core");
      if (!current || !place.current) return;
      const element = document.createElement("video");
      element.className = "video-js";
      element.setAttribute("playsinline", "");
      place.current.append(element);
      player = videojs(element, {
        controls: false,
        preload: "auto",
        loadingSpinner: false,
        bigPlayButton: false,
        errorDisplay: false,
        // The sheet has its own transport; what is not built cannot be stumbled over with the keyboard.
        controlBar: false,
        textTrackSettings: false,
        titleBar: false,
        html5: { nativeTextTracks: true },
        userActions: { hotkeys: false, click: false, doubleClick: false },
        sources: [{ src: recordingAddress(id), type: typeOf(name) }],
      });
      player.on("error", onFailed);
      const video = place.current.querySelector("video") as HTMLVideoElement;
      video.setAttribute("aria-label", `Recording ${name}`);
      video.tabIndex = -1;
      picture = new Picture(video);
      onPicture(picture);
      const ready = player;
      ready.ready(() => current && setPlayer(ready));
      const response = await fetch(`${recordingAddress(id)}/frames`);
      if (response.ok && current) picture.frames = decodeFrames(new Uint8Array(await response.arrayBuffer()));
    };
    void begin();
    return () => {
      current = false;
      onPicture(null);
      setPlayer(null);
      picture?.close();
      player?.dispose();
    };
  }, [id, name, onPicture, onFailed]);
  useTextTrack(player, captions);
  return <div ref={place} />;
}

/** The captions as the player's own text track: the browser draws them, and can say them to who does not see them. */
function useTextTrack(
  player: VideoJsPlayer | null,
  captions: { track: CaptionTrack; shown: boolean } | null,
): void {
  const track = captions?.track;
  const shown = captions?.shown ?? false;
  const [own, setOwn] = useState<TextTrack | null>(null);
  useEffect(() => {
    if (!player || !track || player.isDisposed()) return;
    const file = new Blob([toWebVtt(captionsOf(track).cues)], { type: "text/vtt" });
    const address = URL.createObjectURL(file);
    const wanted = { kind: "captions" as const, src: address, label: track.name };
    const added = player.addRemoteTextTrack(wanted, false);
    setOwn((added as unknown as { track: TextTrack }).track);
    return () => {
      setOwn(null);
      if (!player.isDisposed()) player.removeRemoteTextTrack(added);
      URL.revokeObjectURL(address);
    };
  }, [player, track]);
  useEffect(() => {
    if (own) own.mode = shown ? "showing" : "hidden";
  }, [own, shown]);
}
