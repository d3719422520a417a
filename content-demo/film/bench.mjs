import { fine } from "./raster.mjs";

const benchColour = [240, 235, 224];

/** The bare bench as a camera sees it: boards, and a little less light towards the edges of the picture. */
export function benchPixels(cam, width, height, into) {
  const pixels = into ?? new Float32Array(width * height * 4);
  const { eye, ahead, right, up, focal } = cam;
  for (let y = 0; y < height; y++) {
    const b = (cam.h / 2 - y * fine - 1) / focal;
    for (let x = 0; x < width; x++) {
      const a = (x * fine + 1 - cam.w / 2) / focal;
      const rayY = ahead[1] + right[1] * a + up[1] * b;
      const rayZ = ahead[2] + right[2] * a + up[2] * b;
      const k = rayY < -0.001 ? -eye[1] / rayY : 400;
      const boards = boardTone(eye[2] + rayZ * k, (fine * k) / focal / Math.max(0.05, -rayY));
      const across = x / width - 0.5;
      const down = (y / height - 0.48) * 0.8;
      const tone = boards * (1.015 - 0.2 * (across * across + down * down));
      const out = (y * width + x) * 4;
      for (let c = 0; c < 3; c++) pixels[out + c] = Math.min(255, benchColour[c] * tone);
    }
  }
  return pixels;
}

/** Boards seven inches wide along x, with a fine joint between them; `pixel` is how much of z one pixel covers. */
function boardTone(z, pixel) {
  const board = Math.round(z / 7 + 0.18) - 0.18;
  const width = Math.max(0.03, pixel);
  const line = Math.max(0, 1 - Math.abs(z - board * 7) / width);
  return 1 - 0.12 * line * Math.min(1, 0.05 / width);
}
