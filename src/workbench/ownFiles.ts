import { download } from "../pane/download";
import { fileNameFor } from "../sharing/fileNameFor";
import type { FileMade, FileWanted, OwnFiles } from "../sharing/shareInFile";
import type { Bar } from "./bar";
import { fileCode } from "./fileCode";

/** Files of their own from the sheets that are open, given to the browser to put where it puts downloads. */
export const ownFiles = ({ wholeFile }: Pick<Bar, "wholeFile">): OwnFiles => ({
  make: async (wanted: FileWanted): Promise<FileMade> => {
    const { valuesFile, plainFile } = await fileCode();
    const handed = await (wanted.as === "values" ? valuesFile : plainFile)(await wholeFile(), wanted);
    return { ...handed, fileName: fileNameFor(wanted) };
  },
  handOut: async ({ fileName, content }) => {
    download(fileName, content);
    return "";
  },
});
