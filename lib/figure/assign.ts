/**
 * Gives each row a column of its own so that the sum of costs is least: the assignment problem, by shortest
 * augmenting paths (Kuhn 1955, Munkres 1957; this form after Jonker and Volgenant 1987).
 *
 * @param costs as many columns as rows or more
 * @returns the column of each row
 */
export function assign(costs: readonly (readonly number[])[]): number[] {
  const columns = costs[0]?.length ?? 0;
  // One column more than there are: the row to be placed stands there before it has one of its own.
  const start = columns;
  const rowOf = new Int32Array(columns + 1).fill(-1);
  const rowPrice = new Float64Array(costs.length);
  const columnPrice = new Float64Array(columns + 1);
  for (let row = 0; row < costs.length; row++) {
    rowOf[start] = row;
    const cameFrom = new Int32Array(columns).fill(start);
    const slack = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
    const seen = new Uint8Array(columns + 1);
    let column = start;
    while (rowOf[column] !== -1) {
      seen[column] = 1;
      const at = rowOf[column] as number;
      let next = -1;
      for (let one = 0; one < columns; one++) {
        if (seen[one]) continue;
        const left = (costs[at]?.[one] as number) - (rowPrice[at] as number) - (columnPrice[one] as number);
        if (left < (slack[one] as number)) {
          slack[one] = left;
          cameFrom[one] = column;
        }
        if (next === -1 || (slack[one] as number) < (slack[next] as number)) next = one;
      }
      const step = slack[next] as number;
      for (let one = 0; one <= columns; one++) {
        if (seen[one]) {
          rowPrice[rowOf[one] as number] = (rowPrice[rowOf[one] as number] as number) + step;
          columnPrice[one] = (columnPrice[one] as number) - step;
        } else if (one < columns) slack[one] = (slack[one] as number) - step;
      }
      column = next;
    }
    while (column !== start) {
      const before = cameFrom[column] as number;
      rowOf[column] = rowOf[before] as number;
      column = before;
    }
  }
  const result = new Array<number>(costs.length).fill(-1);
  for (let one = 0; one < columns; one++) if (rowOf[one] !== -1) result[rowOf[one] as number] = one;
  return result;
}
