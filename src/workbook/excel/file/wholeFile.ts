import { fileBroken, fileLate, fileNotHandedOver, noFileHere } from "../../../problems/files/ownFileWords";
import { NoOwnFile } from "../../NoOwnFile";
import { HOST } from "../excelProblem";

// "Office.Document.getFileAsync": slices of at most 4 MB, of 64 KB on an iPad, where Excel hands no file over at all.
const SLICE_BYTES = 1_048_576;
// Each answer; Excel packs the whole workbook before the first.
const PATIENCE_SECONDS = 60;
const MILLISECONDS_A_SECOND = 1000;

type Asked<T> = (answered: (result: Office.AsyncResult<T>) => void) => void;

/**
 * The open workbook as the .xlsx or .xlsm file that Excel would save. The file is closed again whatever happens: with two of them open Excel
 * hands no further one over ("Office.File.closeAsync"). Not every Excel can: on the web the documentation promises no such file, and hosts that
 * embed it refuse (OfficeDev/office-js issue 5297).
 * @throws NoOwnFile
 */
export async function wholeFile(patienceSeconds = PATIENCE_SECONDS): Promise<Uint8Array<ArrayBuffer>> {
  const { document, requirements } = Office.context;
  if (typeof document?.getFileAsync !== "function" || !requirements.isSetSupported("CompressedFile")) throw new NoOwnFile(noFileHere(HOST));
  const file = await answer<Office.File>(patienceSeconds, (answered) =>
    document.getFileAsync(Office.FileType.Compressed, { sliceSize: SLICE_BYTES }, answered),
  );
  try {
    return await contentOf(file, patienceSeconds);
  } finally {
    // Nothing is lost by a file that cannot be closed.
    await answer<void>(patienceSeconds, (answered) => file.closeAsync(answered)).catch(() => undefined);
  }
}

async function contentOf(file: Office.File, patienceSeconds: number): Promise<Uint8Array<ArrayBuffer>> {
  const content = new Uint8Array(file.size);
  let at = 0;
  for (let index = 0; index < file.sliceCount; index++) {
    const { data } = await answer<Office.Slice>(patienceSeconds, (answered) => file.getSliceAsync(index, answered));
    // Bytes, in whatever list the platform puts them.
    const bytes = Uint8Array.from((data ?? []) as ArrayLike<number>);
    if (at + bytes.length > content.length) throw new NoOwnFile(fileBroken(HOST));
    content.set(bytes, at);
    at += bytes.length;
  }
  if (at !== content.length || at === 0) throw new NoOwnFile(fileBroken(HOST));
  return content;
}

/** @throws NoOwnFile where Office says no, says nothing for too long, or throws */
async function answer<T>(patienceSeconds: number, ask: Asked<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  try {
    return await new Promise<T>((resolve, reject) => {
      timer = setTimeout(() => reject(new NoOwnFile(fileLate(HOST, patienceSeconds))), patienceSeconds * MILLISECONDS_A_SECOND);
      ask(({ status, value, error }) => {
        if (status === Office.AsyncResultStatus.Succeeded) resolve(value);
        else reject(new NoOwnFile(fileNotHandedOver(HOST, error?.message ?? String(status))));
      });
    });
  } catch (thrown) {
    throw thrown instanceof NoOwnFile ? thrown : new NoOwnFile(fileNotHandedOver(HOST, thrown instanceof Error ? thrown.message : String(thrown)));
  } finally {
    clearTimeout(timer);
  }
}
