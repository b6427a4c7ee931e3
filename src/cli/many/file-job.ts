// What is done with one of many files. What a job gives back is plain data. A fault of the program in one file is that
// file's result, and never the end of the others.

export interface FileJob<Order, Item> {
  /** `place`: of the file among those given. */
  readonly item: (file: string, place: number, order: Order) => Item;
  /** In place of an item where the program broke over the file. */
  readonly fault: (file: string, error: unknown, order: Order) => Item;
}

export function itemOf<Order, Item>(
  job: FileJob<Order, Item>,
  file: string,
  place: number,
  order: Order,
): Item {
  try {
    return job.item(file, place, order);
  } catch (error) {
    return job.fault(file, error, order);
  }
}
