import { number, sheet, source, words } from "../sheet.ts";
import type { Source } from "../source.ts";

/** Deep groove ball bearings: bore, outside diameter and width in mm. */
const deepGroove = sheet(
  { number: words, bore: number, outside: number, width: number, source },
  `
  number bore outside width source
  604    4    12      4     iso15memory
  605    5    14      5     iso15memory
  606    6    17      6     iso15memory
  607    7    19      6     iso15memory
  608    8    22      7     iso15
  609    9    24      7     iso15
  623    3    10      4     iso15memory
  624    4    13      5     iso15memory
  625    5    16      5     iso15
  626    6    19      6     iso15
  627    7    22      7     iso15
  628    8    24      8     iso15memory
  629    9    26      8     iso15
  634    4    16      5     iso15memory
  635    5    19      6     iso15memory
  6000   10   26      8     iso15chart
  6001   12   28      8     iso15chart
  6002   15   32      9     iso15chart
  6003   17   35      10    iso15chart
  6004   20   42      12    iso15chart
  6005   25   47      12    iso15chart
  6006   30   55      13    iso15chart
  6007   35   62      14    iso15chart
  6008   40   68      15    iso15chart
  6009   45   75      16    iso15chart
  6010   50   80      16    iso15chart
  6011   55   90      18    iso15chart
  6012   60   95      18    iso15chart
  6013   65   100     18    iso15chart
  6014   70   110     20    iso15chart
  6015   75   115     20    iso15chart
  6016   80   125     22    iso15chart
  6017   85   130     22    iso15chart
  6018   90   140     24    iso15chart
  6019   95   145     24    iso15chart
  6020   100  150     24    iso15chart
  6021   105  160     26    iso15chart
  6022   110  170     28    iso15chart
  6024   120  180     28    iso15chart
  6026   130  200     33    iso15chart
  6028   140  210     33    iso15chart
  6030   150  225     35    iso15chart
  6200   10   30      9     iso15chart
  6201   12   32      10    iso15chart
  6202   15   35      11    iso15chart
  6203   17   40      12    iso15chart
  6204   20   47      14    iso15chart
  6205   25   52      15    iso15chart
  6206   30   62      16    iso15chart
  6207   35   72      17    iso15chart
  6208   40   80      18    iso15chart
  6209   45   85      19    iso15chart
  6210   50   90      20    iso15chart
  6211   55   100     21    iso15chart
  6212   60   110     22    iso15chart
  6213   65   120     23    iso15chart
  6214   70   125     24    iso15chart
  6215   75   130     25    iso15chart
  6216   80   140     26    iso15chart
  6217   85   150     28    iso15chart
  6218   90   160     30    iso15chart
  6219   95   170     32    iso15chart
  6220   100  180     34    iso15chart
  6221   105  190     36    iso15chart
  6222   110  200     38    iso15chart
  6224   120  215     40    iso15chart
  6226   130  230     40    iso15chart
  6228   140  250     42    iso15chart
  6230   150  270     45    iso15chart
  6300   10   35      11    iso15
  6301   12   37      12    iso15
  6302   15   42      13    iso15
  6303   17   47      14    iso15
  6304   20   52      15    iso15
  6305   25   62      17    iso15
  6306   30   72      19    iso15table
  6307   35   80      21    iso15table
  6308   40   90      23    iso15table
  6309   45   100     25    iso15table
  6310   50   110     27    iso15table
  6311   55   120     29    iso15memory
  6312   60   130     31    iso15memory
  6313   65   140     33    iso15memory
  6314   70   150     35    iso15memory
  6315   75   160     37    iso15memory
  6316   80   170     39    iso15memory
  6317   85   180     41    iso15memory
  6318   90   190     43    iso15memory
  6319   95   200     45    iso15memory
  6320   100  215     47    iso15memory
  6403   17   62      17    iso15memory
  6404   20   72      19    iso15memory
  6405   25   80      21    iso15memory
  6406   30   90      23    iso15memory
  6407   35   100     25    iso15memory
  6408   40   110     27    iso15memory
  16002  15   32      8     iso15
  16003  17   35      8     iso15
  16004  20   42      8     iso15
  16005  25   47      8     iso15
  16006  30   55      9     iso15
  16007  35   62      9     iso15
  16100  10   28      8     iso15
  16101  12   30      8     iso15
  61800  10   19      5     iso15memory
  61801  12   21      5     iso15memory
  61802  15   24      5     iso15memory
  61803  17   26      5     iso15memory
  61804  20   32      7     iso15memory
  61805  25   37      7     iso15memory
  61806  30   42      7     iso15memory
  61807  35   47      7     iso15memory
  61808  40   52      7     iso15memory
  61900  10   22      6     iso15memory
  61901  12   24      6     iso15memory
  61902  15   28      7     iso15memory
  61903  17   30      7     iso15memory
  61904  20   37      9     iso15memory
  61905  25   42      9     iso15memory
  61906  30   47      9     iso15memory
  61907  35   55      10    iso15memory
  61908  40   62      12    iso15memory
  `,
);

/** Thrust ball bearings, single direction: bore, outside diameter and height in mm. */
const thrust = sheet(
  { number: words, bore: number, outside: number, width: number, source },
  `
  number bore outside width source
  51100  10   24      9     iso104
  51101  12   26      9     iso104
  51102  15   28      9     iso104
  51103  17   30      9     iso104
  51104  20   35      10    iso104
  51105  25   42      11    iso104
  51106  30   47      11    iso104
  51107  35   52      12    iso104
  51108  40   60      13    iso104
  51109  45   65      14    iso104
  51110  50   70      14    iso104
  51111  55   78      16    iso104
  51112  60   85      17    iso104
  51113  65   90      18    iso104
  51114  70   95      18    iso104
  51115  75   100     19    iso104
  51116  80   105     19    iso104
  51117  85   110     19    iso104
  51118  90   120     22    iso104
  51120  100  135     25    iso104
  51200  10   26      11    iso104
  51201  12   28      11    iso104
  51202  15   32      12    iso104
  51203  17   35      12    iso104
  51204  20   40      14    iso104
  51205  25   47      15    iso104
  51206  30   52      16    iso104
  51207  35   62      18    iso104
  51208  40   68      19    iso104
  51209  45   73      20    iso104
  51210  50   78      22    iso104
  51211  55   90      25    iso104
  51212  60   95      26    iso104
  51213  65   100     27    iso104
  51214  70   105     27    iso104
  51215  75   110     27    iso104
  51216  80   115     28    iso104
  51217  85   125     31    iso104
  51218  90   135     35    iso104
  51220  100  150     38    iso104
  51305  25   52      18    iso104
  51306  30   60      21    iso104
  51307  35   68      24    iso104
  51308  40   78      26    iso104
  51309  45   85      28    iso104
  51310  50   95      31    iso104
  51311  55   105     35    iso104
  51312  60   110     35    iso104
  51405  25   60      24    iso104
  51406  30   70      28    iso104
  51407  35   80      32    iso104
  51408  40   90      36    iso104
  51409  45   100     39    iso104
  51410  50   110     43    iso104
  `,
);

/** Boundary dimensions of a bearing, in mm: what must fit shaft and housing. Load and clearance are not in them. */
export interface Bearing {
  /** Basic number without suffixes: "6205". */
  number: string;
  kind: "deep groove ball" | "thrust ball";
  bore: number;
  outside: number;
  width: number;
  source: Source;
}

export const bearings: readonly Bearing[] = [
  ...deepGroove.map((row): Bearing => ({ kind: "deep groove ball", ...row })),
  ...thrust.map((row): Bearing => ({ kind: "thrust ball", ...row })),
];

const byNumber = new Map(bearings.map((bearing) => [bearing.number, bearing]));
const suffixes = /^(?:[-\s/]*(?:2RSR?1?|RSR?1?|2RZ|2Z|ZZ?|RZ|LLU|LLB|DDU|VV|C[2345]|NR|N|TN9?|P6))*$/i;

/**
 * A bearing by its number: "6205", "6205-2RS C3", "51105"; 6800 and 6900 numbers are other makers' words for 61800
 * and 61900. Nothing for numbers that no table here has.
 */
export function bearing(text: string): Bearing | undefined {
  const [, digits = "", rest = ""] = /^\s*(?:bearing\s)?(\d{3,5})(.{0,24})$/i.exec(text) ?? [];
  if (!suffixes.test(rest.trim())) return undefined;
  return byNumber.get(digits) ?? byNumber.get(digits.replace(/^6([89]\d\d)$/, "61$1"));
}

/** Bearings of these dimensions in mm, as far as they are given: what number a bare bearing has. */
export function bearingsSized(asked: { bore?: number; outside?: number; width?: number }): Bearing[] {
  const agrees = (one: number, wanted?: number): boolean =>
    wanted === undefined || Math.abs(one - wanted) < 0.06;
  return bearings.filter(
    ({ bore, outside, width }) =>
      agrees(bore, asked.bore) && agrees(outside, asked.outside) && agrees(width, asked.width),
  );
}
