// The pages: one record each. The row of pages, the frame, the links, the keys, the titles and what is loaded are written from
// here, so that a new page is one record and one component.

interface PageRecord {
  /** In the link's fragment: `#mend`. */
  readonly name: string;
  readonly title: string;
  /** Its component under `ui/pages`; the first page is part of the page's own script. */
  readonly view: string;
  /** Which group of the row of pages names it; null: it is reached from where it is wanted. */
  readonly row: 'build' | 'found' | 'look-up' | null;
  /** The letter that opens it, with Alt and Shift. */
  readonly key: string | null;
  /** It speaks of the build on the sheet: a reload brings the build back. */
  readonly ofBuild: boolean;
}

/** In the order of the row. */
export const PAGES = [
  { name: 'start', title: 'First page', view: 'start/StartView', row: null, key: null, ofBuild: false },
  { name: 'sheet', title: 'Sheet', view: 'sheet/SheetView', row: 'build', key: 'S', ofBuild: true },
  { name: 'mend', title: 'Mend', view: 'mend/MendView', row: 'build', key: 'M', ofBuild: true },
  { name: 'spread', title: 'Spread', view: 'spread/SpreadView', row: 'build', key: 'P', ofBuild: true },
  { name: 'compare', title: 'Compare', view: 'compare/CompareView', row: 'build', key: 'C', ofBuild: true },
  { name: 'books', title: 'Books', view: 'books/BooksView', row: 'build', key: 'B', ofBuild: true },
  { name: 'field', title: 'Field', view: 'field/FieldView', row: 'build', key: 'F', ofBuild: true },
  {
    name: 'photographs',
    title: 'Photographs',
    view: 'photographs/PhotographsView',
    row: 'found',
    key: 'H',
    ofBuild: true,
  },
  {
    name: 'taking-apart',
    title: 'Taking apart',
    view: 'taking-apart/TakingApartView',
    row: 'found',
    key: 'A',
    ofBuild: true,
  },
  { name: 'stress', title: 'Stress', view: 'stress/StressView', row: 'found', key: 'T', ofBuild: true },
  { name: 'report', title: 'Report', view: 'papers/PapersView', row: 'found', key: 'R', ofBuild: true },
  { name: 'tables', title: 'Tables', view: 'tables/TablesView', row: 'look-up', key: 'V', ofBuild: false },
  { name: 'learn', title: 'Learn', view: 'learn/LearnView', row: 'look-up', key: 'L', ofBuild: false },
  { name: 'words', title: 'Words', view: 'words/WordsView', row: 'look-up', key: 'W', ofBuild: false },
  {
    name: 'decide',
    title: 'What would decide',
    view: 'decide/DecideView',
    row: null,
    key: 'D',
    ofBuild: true,
  },
  { name: 'examine', title: 'Examine', view: 'examine/ExamineView', row: null, key: null, ofBuild: false },
  { name: 'design', title: 'Design', view: 'design/DesignView', row: null, key: null, ofBuild: false },
  { name: 'open', title: 'Open', view: 'open/OpenView', row: null, key: 'O', ofBuild: false },
  {
    name: 'repair',
    title: 'To be put right',
    view: 'repair/RepairView',
    row: null,
    key: null,
    ofBuild: false,
  },
  {
    name: 'minutes',
    title: 'First ten minutes',
    view: 'minutes/MinutesView',
    row: null,
    key: null,
    ofBuild: false,
  },
  { name: 'many', title: 'Many at once', view: 'many/ManyView', row: null, key: null, ofBuild: false },
] as const satisfies readonly PageRecord[];

export type PageName = (typeof PAGES)[number]['name'];

export const pageOf = (name: PageName): PageRecord & { readonly name: PageName } =>
  PAGES.find((page) => page.name === name)!;

export const isPage = (name: string): name is PageName => PAGES.some((page) => page.name === name);
