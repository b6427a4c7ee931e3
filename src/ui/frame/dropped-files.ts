// The files that were dropped, those inside dropped folders too. Folders must be asked for before the drop's event ends.

const MOST = 4000;

export function droppedFiles(transfer: DataTransfer | null): Promise<readonly File[]> {
  const entries = [...(transfer?.items ?? [])].flatMap((item) => item.webkitGetAsEntry() ?? []);
  const plain = [...(transfer?.files ?? [])];
  if (!entries.some(({ isDirectory }) => isDirectory)) return Promise.resolve(plain);
  return gathered(entries);
}

async function gathered(entries: readonly FileSystemEntry[]): Promise<readonly File[]> {
  const found: File[] = [];
  const open = [...entries];
  for (let entry = open.shift(); entry !== undefined && found.length < MOST; entry = open.shift()) {
    if (isFile(entry)) found.push(...(await fileOf(entry)));
    else if (isFolder(entry)) open.push(...(await insideOf(entry)));
  }
  return found;
}

const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;
const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory;

const fileOf = (entry: FileSystemFileEntry): Promise<readonly File[]> =>
  new Promise((done) =>
    entry.file(
      (file) => done([file]),
      () => done([]),
    ),
  );

/** A folder tells its entries in batches; an empty one is the end. */
async function insideOf(folder: FileSystemDirectoryEntry): Promise<readonly FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const batch = await new Promise<readonly FileSystemEntry[]>((done) =>
      reader.readEntries(done, () => done([])),
    );
    if (batch.length === 0) return all;
    all.push(...batch);
  }
}
