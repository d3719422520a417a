import { createSHA256 } from "hash-wasm";

/** What the worker answers: the SHA-256 of the file it was sent, or that the file can no longer be read. */
export type HashAnswer = { sha256: string } | { failed: string };

/** Reads a file piece by piece beside the page, so that neither the page nor its memory feels it. */
self.onmessage = async ({ data: file }: MessageEvent<File>) => {
  try {
    const hash = await createSHA256();
    const reader = file.stream().getReader();
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) hash.update(piece.value);
    self.postMessage({ sha256: hash.digest("hex") } satisfies HashAnswer);
  } catch (error) {
    self.postMessage({ failed: error instanceof Error ? error.message : String(error) } satisfies HashAnswer);
  }
};
