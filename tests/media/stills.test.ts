import { createHash } from "node:crypto";
import { crc32, deflateSync } from "node:zlib";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { bakePicture, MediaError, mostPixels } from "#lib/media/index.ts";

type Colour = [red: number, green: number, blue: number];
const red: Colour = [220, 30, 30];
const green: Colour = [30, 160, 30];
const blue: Colour = [30, 30, 220];
const white: Colour = [255, 255, 255];

/** A picture of four fields, as stored: top left, top right, bottom left, bottom right. */
function fourFields(width = 120, height = 80) {
  const pixels = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const colour = y < height / 2 ? (x < width / 2 ? red : green) : x < width / 2 ? blue : white;
      pixels.set(colour, (y * width + x) * 3);
    }
  }
  return sharp(pixels, { raw: { width, height, channels: 3 } });
}

/** The colours in the middle of the four quarters of a picture, each named after the nearest field. */
async function fieldsOf(jpeg: Buffer): Promise<string> {
  const { data, info } = await sharp(jpeg).raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => {
    const from = (Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * info.channels;
    const distance = (colour: Colour) =>
      colour.reduce((sum, value, i) => sum + Math.abs(value - (data[from + i] as number)), 0);
    const near = Object.entries({ R: red, G: green, B: blue, W: white }).sort(
      (a, b) => distance(a[1]) - distance(b[1]),
    );
    return near[0]?.[0];
  };
  return `${at(0.25, 0.25)}${at(0.75, 0.25)}${at(0.25, 0.75)}${at(0.75, 0.75)}`;
}

// TIFF 6.0, Orientation (which Exif takes over): where the stored first row and first column are to be seen.
const orientations: [orientation: number, firstRow: string, firstColumn: string][] = [
  [1, "top", "left"],
  [2, "top", "right"],
  [3, "bottom", "right"],
  [4, "bottom", "left"],
  [5, "left", "top"],
  [6, "right", "top"],
  [7, "right", "bottom"],
  [8, "left", "bottom"],
];

/** Lays the stored quarters where the two sides say. */
function seen(firstRow: string, firstColumn: string): string {
  const opposite: Record<string, string> = { top: "bottom", bottom: "top", left: "right", right: "left" };
  const sides = (row: number, column: number) => [
    row === 0 ? firstRow : (opposite[firstRow] as string),
    column === 0 ? firstColumn : (opposite[firstColumn] as string),
  ];
  const shown = ["", "", "", ""];
  for (const [index, name] of ["R", "G", "B", "W"].entries()) {
    const where = sides(index >> 1, index & 1);
    shown[(where.includes("bottom") ? 2 : 0) + (where.includes("right") ? 1 : 0)] = name;
  }
  return shown.join("");
}

describe("turning upright", () => {
  test.each(orientations)(
    "orientation %i: first row at the %s, first column at the %s",
    async (orientation, row, column) => {
      const stored = await fourFields()
        .withExif({ IFD0: { Orientation: String(orientation) } })
        .withMetadata({ orientation })
        .jpeg()
        .toBuffer();
      const baked = await bakePicture(stored);
      const turned = orientation >= 5;
      expect([baked.width, baked.height]).toEqual(turned ? [80, 120] : [120, 80]);
      expect(await fieldsOf(baked.jpeg)).toBe(seen(row, column));
      expect((await sharp(baked.jpeg).metadata()).orientation).toBeUndefined();
    },
  );
});

describe("what a camera wrote beside the picture", () => {
  const exif = {
    IFD0: { Make: "Maker Nobody", Model: "Model Nothing", Software: "Firmware 9", Copyright: "A Person" },
    IFD2: { DateTimeOriginal: "2026:05:03 09:21:07", BodySerialNumber: "SN-123456" },
    IFD3: {
      GPSLatitudeRef: "N",
      GPSLatitude: "51/1 28/1 38/1",
      GPSLongitudeRef: "W",
      GPSLongitude: "0/1 0/1 5/1",
    },
  };
  const xmp =
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" dc:creator="XMP Person"/></rdf:RDF></x:xmpmeta>';

  test("is not in the baked one: place, maker, serial number, date, person", async () => {
    const stored = await fourFields().withExif(exif).withXmp(xmp).withIccProfile("p3").jpeg().toBuffer();
    for (const word of ["Maker Nobody", "SN-123456", "XMP Person", "ICC_PROFILE"]) {
      expect(stored.includes(word)).toBe(true);
    }
    const { jpeg } = await bakePicture(stored);
    const { exif: found, xmp: foundXmp, icc, iptc } = await sharp(jpeg).metadata();
    expect([found, foundXmp, icc, iptc]).toEqual([undefined, undefined, undefined, undefined]);
    const words = [
      "Exif",
      "GPS",
      "Nobody",
      "Nothing",
      "Firmware",
      "Person",
      "SN-1",
      "2026",
      "ICC_PROFILE",
      "http",
    ];
    for (const word of words) expect(jpeg.includes(word)).toBe(false);
    // ISO/IEC 10918-1: only the segments that hold a picture; APP1 to APP15 and comments are where the rest would be.
    expect(markersOf(jpeg).filter((marker) => (marker > 0xe0 && marker <= 0xef) || marker === 0xfe)).toEqual(
      [],
    );
  });

  test("nor is anything that was hung on behind the picture", async () => {
    const stored = Buffer.concat([
      await fourFields().jpeg().toBuffer(),
      Buffer.from("<script>alert(1)</script>PK\x03\x04"),
    ]);
    expect((await bakePicture(stored)).jpeg.includes("script")).toBe(false);
  });
});

// CSS Color Module Level 4, sample code for colour conversions: linear values to CIE XYZ (D65), by rows, from memory.
const srgbToXyz = [0.4124, 0.3576, 0.1805, 0.2126, 0.7152, 0.0722, 0.0193, 0.1192, 0.9505];
const p3ToXyz = [0.4866, 0.2657, 0.1982, 0.229, 0.6917, 0.0793, 0, 0.0451, 1.0439];

/** Where a colour lies for the eye. Both spaces share one curve (IEC 61966-2-1). */
function toXyz(bytes: number[], matrix: number[]): number[] {
  const linear = bytes.map((byte) =>
    byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4,
  );
  return [0, 3, 6].map((row) =>
    linear.reduce((sum, value, column) => sum + value * (matrix[row + column] as number), 0),
  );
}

describe("colours", () => {
  test("of a wide-gamut picture are brought to sRGB, not only renamed", async () => {
    const colour = { r: 200, g: 100, b: 50 };
    const create = { width: 64, height: 64, channels: 3 as const, background: colour };
    const stored = await sharp({ create }).withIccProfile("p3").png().toBuffer();
    const before = [...(await sharp(stored, { ignoreIcc: true }).raw().toBuffer()).subarray(0, 3)];
    const after = [
      ...(
        await sharp((await bakePicture(stored)).jpeg)
          .raw()
          .toBuffer()
      ).subarray(0, 3),
    ];
    expect(Math.abs((before[0] as number) - (after[0] as number))).toBeGreaterThan(5);
    const [seenBefore, seenAfter] = [toXyz(before, p3ToXyz), toXyz(after, srgbToXyz)];
    for (const axis of [0, 1, 2]) expect(seenAfter[axis]).toBeCloseTo(seenBefore[axis] as number, 2);
  });

  test("four inks and grey become three colours", async () => {
    for (const space of ["cmyk", "b-w"]) {
      const stored = await fourFields().toColourspace(space).jpeg().toBuffer();
      const { channels, space: found } = await sharp((await bakePicture(stored)).jpeg).metadata();
      expect([channels, found]).toEqual([3, "srgb"]);
    }
  });

  test("what is transparent becomes white", async () => {
    const create = {
      width: 16,
      height: 16,
      channels: 4 as const,
      background: { r: 0, g: 0, b: 0, alpha: 0 },
    };
    const baked = await sharp((await bakePicture(await sharp({ create }).png().toBuffer())).jpeg)
      .raw()
      .toBuffer();
    expect(Math.min(...baked)).toBeGreaterThanOrEqual(254);
  });
});

describe("what is taken", () => {
  test.each(["jpeg", "png", "webp", "avif"] as const)("%s", async (format) => {
    const baked = await bakePicture(await fourFields().toFormat(format, { quality: 95 }).toBuffer());
    expect([baked.width, baked.height, await fieldsOf(baked.jpeg)]).toEqual([120, 80, "RGBW"]);
    expect(baked.sha256).toBe(createHash("sha256").update(baked.jpeg).digest("hex"));
  });

  test("the same picture gives the same bytes", async () => {
    const stored = await fourFields().png().toBuffer();
    const [one, other] = [await bakePicture(stored), await bakePicture(Uint8Array.from(stored))];
    expect(one.sha256).toBe(other.sha256);
  });

  test("16 bits a colour", async () => {
    const stored = await fourFields().toColourspace("rgb16").png().toBuffer();
    expect(await fieldsOf((await bakePicture(stored)).jpeg)).toBe("RGBW");
  });
});

describe("what is not", () => {
  async function refused(bytes: Uint8Array): Promise<MediaError> {
    const error = await bakePicture(bytes).catch((error) => error);
    expect(error).toBeInstanceOf(MediaError);
    for (const words of [error.found, error.expected, error.todo]) expect(words).toMatch(/^[A-Z].*\.$/);
    return error;
  }
  const box = (text: string) => Buffer.from(text, "latin1");

  test.each([
    ["nothing", Buffer.alloc(0), /empty/],
    ["text", box("no picture at all"), /text/],
    ["a drawing with a script in it", box('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>'), /text/],
    ["a GIF", box("GIF89a\x01\x00\x01\x00\x00\x00\x00;"), /GIF/],
    ["a film", box("\0\0\0\x18ftypmp42\0\0\0\0mp42isom"), /MP4/],
    ["a document", box("%PDF-1.7\n"), /PDF/],
  ])("%s", async (_what, bytes, found) => {
    const error = await refused(bytes);
    expect([error.kind, error.found]).toEqual(["not-a-picture", expect.stringMatching(found)]);
  });

  test("a picture cut short", async () => {
    for (const format of ["jpeg", "png", "webp"] as const) {
      const whole = await fourFields(600, 400).toFormat(format).toBuffer();
      expect((await refused(whole.subarray(0, whole.length >> 1))).kind).toBe("unreadable-picture");
      expect((await refused(whole.subarray(0, 20))).kind).toBe("unreadable-picture");
    }
  });

  test("a HEIC picture says what to do on the telephone", async () => {
    const error = await refused(box("\0\0\0\x18ftypheic\0\0\0\0mif1heic\0\0\0\x08meta"));
    expect(error.todo).toMatch(/JPEG/);
  });

  test("30,000 by 30,000 pixels, promised by a hundred bytes", async () => {
    const started = process.memoryUsage().rss;
    const error = await refused(pngThatPromises(30_000, 30_000));
    expect([error.kind, error.found]).toEqual(["too-large", expect.stringContaining("30000 by 30000")]);
    expect(process.memoryUsage().rss - started).toBeLessThan(200e6);
    expect(mostPixels).toBeLessThan(30_000 * 30_000);
  });
});

function pngThatPromises(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, check]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from("89504e470d0a1a0a", "hex");
  return Buffer.concat([
    signature,
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(Buffer.alloc(64))),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** The second bytes of all markers before the picture's data begins. */
function markersOf(jpeg: Buffer): number[] {
  const markers: number[] = [];
  for (let at = 2; jpeg[at] === 0xff && jpeg[at + 1] !== 0xda; at += 2 + jpeg.readUInt16BE(at + 2)) {
    markers.push(jpeg[at + 1] as number);
  }
  return markers;
}
