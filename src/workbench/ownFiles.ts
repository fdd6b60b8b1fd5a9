import type { FileMade, FileWanted, OwnFiles } from "../sharing/shareInFile";
import { download, fileCode, type Bar } from "./bar";

// What a file's name cannot hold in one system or another.
const NOT_IN_NAMES = /[<>:"/\\|?*]/g;

/** Files of their own from the sheets that are open, given to the browser to put where it puts downloads. */
export const ownFiles = ({ wholeFile }: Pick<Bar, "wholeFile">): OwnFiles => ({
  make: async (wanted: FileWanted): Promise<FileMade> => {
    const { valuesFile, plainFile } = await fileCode();
    const content = await wholeFile();
    const [first, ...further] = wanted.sheets;
    const about = first !== undefined && further.length === 0 ? first.sheet.replace(NOT_IN_NAMES, "_") : "workbook";
    const handed = await (wanted.as === "values" ? valuesFile : plainFile)(content, wanted);
    return { ...handed, fileName: `${about} ${wanted.as === "values" ? "values" : "plain cells"}.xlsx` };
  },
  handOut: async ({ fileName, content }) => download(fileName, content),
});
