import { extname } from "node:path";

const types: Record<string, string> = {
  ".mp4": "video/mp4",
  ".m4v": "video/mp4",
  ".webm": "video/webm",
  ".mkv": "video/matroska",
  ".avi": "video/vnd.avi",
  ".mts": "video/mp2t",
  ".m2ts": "video/mp2t",
  ".ts": "video/mp2t",
  ".mpg": "video/mpeg",
  ".mpeg": "video/mpeg",
  ".3gp": "video/3gpp",
  ".3g2": "video/3gpp2",
  ".jpg": "image/jpeg",
  ".jpeg": "image/jpeg",
  ".png": "image/png",
  ".webp": "image/webp",
  ".vtt": "text/vtt; charset=utf-8",
  ".srt": "application/x-subrip; charset=utf-8",
};

/**
 * The media type a recording or a still is served with, from the ending of its name (IANA registry). A MOV file
 * goes out as MP4: Chromium turns "video/quicktime" down unseen, yet plays H.264 from it (measured).
 */
export function mediaType(name: string): string {
  const ending = extname(name).toLowerCase();
  return ending === ".mov" ? "video/mp4" : (types[ending] ?? "application/octet-stream");
}
