/**
 * Pairs of size and threads to the inch that a bare "1/4-20" or "five sixteenths by 22" may stand for. Only
 * for recognising a thread; the tables with their diameters are in `lib/reference/`.
 */
const unified =
  "1/4:20,28,32 5/16:18,24,32 3/8:16,24,32 7/16:14,20,28 1/2:13,20,28 9/16:12,18,24 5/8:11,18,24 3/4:10,16,20 7/8:9,14,20 1:8,12,14,20 1-1/8:7,12 1-1/4:7,12 1-3/8:6,12 1-1/2:6,12";
const whitworth =
  "1/8:40 3/16:24 7/32:24 1/4:20 5/16:18 3/8:16 7/16:14 1/2:12 9/16:12 5/8:11 3/4:10 7/8:9 1:8";
const fine =
  "3/16:32 7/32:28 1/4:26 9/32:26 5/16:22 3/8:20 7/16:18 1/2:16 9/16:16 5/8:14 11/16:14 3/4:12 7/8:11 1:10";
const cycle =
  "1/8:40 5/32:32 3/16:32 1/4:26 5/16:26 3/8:26 7/16:26,20 1/2:26,20 9/16:26,20 5/8:26 11/16:26 3/4:26";
const numbers = "0:80 1:64,72 2:56,64 3:48,56 4:40,48 5:40,44 6:32,40 8:32,36 10:24,32 12:24,28,32 14:20,24";

/** Sources: ASME B1.1 (unified), BS 84 (Whitworth and BSF), BS 811 (cycle), each read in secondary tables. */
const pairs = new Set([unified, whitworth, fine, cycle].flatMap(expand));
const numberPairs = new Set(expand(numbers));

function expand(list: string): string[] {
  return list.split(" ").flatMap((entry) => {
    const [size = "", counts = ""] = entry.split(":");
    return counts.split(",").map((tpi) => `${size}:${tpi}`);
  });
}

export const isListed = (size: string, tpi: number): boolean => pairs.has(`${size}:${tpi}`);
export const isListedNumber = (size: number, tpi: number): boolean => numberPairs.has(`${size}:${tpi}`);
