"use client";
import { useEffect, useRef } from "react";
import type VideoJsPlayer from "video.js/dist/types/player";
import type { Recording } from "#lib/build/index.ts";
import { decodeFrames } from "#lib/media/frames-bytes.ts";
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
  onPicture,
  onFailed,
}: {
  recording: Recording;
  onPicture: (picture: Picture | null) => void;
  onFailed: () => void;
}) {
  const place = useRef<HTMLDivElement>(null);
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
        userActions: { hotkeys: false, click: false, doubleClick: false },
        sources: [{ src: recordingAddress(id), type: typeOf(name) }],
      });
      player.on("error", onFailed);
      const video = place.current.querySelector("video") as HTMLVideoElement;
      video.setAttribute("aria-label", `Recording ${name}`);
      video.tabIndex = -1;
      picture = new Picture(video);
      onPicture(picture);
      const response = await fetch(`${recordingAddress(id)}/frames`);
      if (response.ok && current) picture.frames = decodeFrames(new Uint8Array(await response.arrayBuffer()));
    };
    void begin();
    return () => {
      current = false;
      onPicture(null);
      picture?.close();
      player?.dispose();
    };
  }, [id, name, onPicture, onFailed]);
  return <div ref={place} />;
}
