/** The little of @lhncbc/ucum-lhc that the tests use; the package has no types of its own. */
declare module "@lhncbc/ucum-lhc" {
  export const UcumLhcUtils: {
    getInstance(): {
      validateUnitString(code: string): { status: string };
      convertUnitTo(from: string, value: number, to: string): { status: string; toVal: number };
    };
  };
}
