import { saveOutOfReach } from "../problems/files/fileProblems";
import { WorkbookProblem } from "../workbook/Workbook";

/** What reads and writes files. Large and not needed at first, so it is fetched when the page stands; from then on no server is needed. */
export async function fileCode(): Promise<FileCode> {
  try {
    const [{ openFile }, { openCopy }, { saveXlsx }, { valuesFile }, { plainFile }, { fileLibrary }] = await Promise.all([
      import(/* webpackChunkName: "xlsx" */ "./xlsx/openXlsx"),
      import(/* webpackChunkName: "xlsx" */ "./xlsx/openCopy"),
      import(/* webpackChunkName: "xlsx" */ "./xlsx/saveXlsx"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/valuesFile"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/handedOn/plainFile"),
      import(/* webpackChunkName: "xlsx" */ "../xlsx/fileLibrary"),
    ]);
    await fileLibrary();
    return { openFile, openCopy, saveXlsx, valuesFile, plainFile };
  } catch {
    throw new WorkbookProblem(saveOutOfReach);
  }
}

type FileCode = Pick<typeof import("./xlsx/openXlsx"), "openFile"> &
  Pick<typeof import("./xlsx/openCopy"), "openCopy"> &
  Pick<typeof import("./xlsx/saveXlsx"), "saveXlsx"> &
  Pick<typeof import("../xlsx/handedOn/valuesFile"), "valuesFile"> &
  Pick<typeof import("../xlsx/handedOn/plainFile"), "plainFile">;
