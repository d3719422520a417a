import { number, sheet, source, words } from "../sheet.ts";

/** Number drills, diameters in inches. */
export const numberDrillRows = sheet(
  { size: words, inches: number, source },
  `
  size inches source
  1    0.2280 asmeB9411
  2    0.2210 asmeB9411
  3    0.2130 asmeB9411
  4    0.2090 asmeB9411
  5    0.2055 asmeB9411
  6    0.2040 asmeB9411
  7    0.2010 asmeB9411
  8    0.1990 asmeB9411
  9    0.1960 asmeB9411
  10   0.1935 asmeB9411
  11   0.1910 asmeB9411
  12   0.1890 asmeB9411
  13   0.1850 asmeB9411
  14   0.1820 asmeB9411
  15   0.1800 asmeB9411
  16   0.1770 asmeB9411
  17   0.1730 asmeB9411
  18   0.1695 asmeB9411
  19   0.1660 asmeB9411
  20   0.1610 asmeB9411
  21   0.1590 asmeB9411
  22   0.1570 asmeB9411
  23   0.1540 asmeB9411
  24   0.1520 asmeB9411
  25   0.1495 asmeB9411
  26   0.1470 asmeB9411
  27   0.1440 asmeB9411
  28   0.1405 asmeB9411
  29   0.1360 asmeB9411
  30   0.1285 asmeB9411
  31   0.1200 asmeB9411
  32   0.1160 asmeB9411
  33   0.1130 asmeB9411
  34   0.1110 asmeB9411
  35   0.1100 asmeB9411
  36   0.1065 asmeB9411
  37   0.1040 asmeB9411
  38   0.1015 asmeB9411
  39   0.0995 asmeB9411
  40   0.0980 asmeB9411
  41   0.0960 asmeB9411
  42   0.0935 asmeB9411
  43   0.0890 asmeB9411
  44   0.0860 asmeB9411
  45   0.0820 asmeB9411
  46   0.0810 asmeB9411
  47   0.0785 asmeB9411
  48   0.0760 asmeB9411
  49   0.0730 asmeB9411
  50   0.0700 asmeB9411
  51   0.0670 asmeB9411
  52   0.0635 asmeB9411
  53   0.0595 asmeB9411
  54   0.0550 asmeB9411
  55   0.0520 asmeB9411
  56   0.0465 asmeB9411
  57   0.0430 asmeB9411
  58   0.0420 asmeB9411
  59   0.0410 asmeB9411
  60   0.0400 asmeB9411
  61   0.0390 asmeB9411
  62   0.0380 asmeB9411
  63   0.0370 asmeB9411
  64   0.0360 asmeB9411
  65   0.0350 asmeB9411
  66   0.0330 asmeB9411
  67   0.0320 asmeB9411
  68   0.0310 asmeB9411
  69   0.0292 asmeB9411
  70   0.0280 asmeB9411
  71   0.0260 asmeB9411
  72   0.0250 asmeB9411
  73   0.0240 asmeB9411
  74   0.0225 asmeB9411
  75   0.0210 asmeB9411
  76   0.0200 asmeB9411
  77   0.0180 asmeB9411
  78   0.0160 asmeB9411
  79   0.0145 asmeB9411
  80   0.0135 asmeB9411
  `,
);

/** Letter drills, diameters in inches. */
export const letterDrillRows = sheet(
  { size: words, inches: number, source },
  `
  size inches source
  A    0.2340 asmeB9411
  B    0.2380 asmeB9411
  C    0.2420 asmeB9411
  D    0.2460 asmeB9411
  E    0.2500 asmeB9411
  F    0.2570 asmeB9411
  G    0.2610 asmeB9411
  H    0.2660 asmeB9411
  I    0.2720 asmeB9411
  J    0.2770 asmeB9411
  K    0.2810 asmeB9411
  L    0.2900 asmeB9411
  M    0.2950 asmeB9411
  N    0.3020 asmeB9411
  O    0.3160 asmeB9411
  P    0.3230 asmeB9411
  Q    0.3320 asmeB9411
  R    0.3390 asmeB9411
  S    0.3480 asmeB9411
  T    0.3580 asmeB9411
  U    0.3680 asmeB9411
  V    0.3770 asmeB9411
  W    0.3860 asmeB9411
  X    0.3970 asmeB9411
  Y    0.4040 asmeB9411
  Z    0.4130 asmeB9411
  `,
);
