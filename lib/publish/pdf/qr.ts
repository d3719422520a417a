import { encode, renderSVG } from "uqr";

/** What a printed code is: its picture, and how many modules wide, quiet zone included. */
export interface PrintedCode {
  svg: string;
  modules: number;
}

/** ISO/IEC 18004 asks for four modules of quiet zone. */
const quietZone = 4;
/** Level Q: a quarter of the code may be hidden by grime. */
const correction = "Q";
/** A code that is larger than this has modules too small for a camera at the size it is printed. */
const mostModules = 69;

/** The QR code of an address; null where the address is too long for one that can be read. */
export function qrCode(address: string): PrintedCode | null {
  try {
    const options = { ecc: correction, border: quietZone } as const;
    const { size } = encode(address, options);
    if (size > mostModules) return null;
    return { svg: renderSVG(address, options), modules: size };
  } catch {
    return null;
  }
}
