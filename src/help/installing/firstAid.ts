/** What goes wrong after installing, and what to do about it. */
export const firstAid: readonly { readonly sign: string; readonly remedy: readonly string[] }[] = [
  {
    sign: "#NAME? in cells that hold our functions",
    remedy: [
      "Excel does not know Retort here. Open Retort once from the Home tab; if it is not there, install it as above.",
      "A #NAME? that was saved in a file often stays: select the cell, press F2 and Enter.",
      "Still #NAME? beside a working pane: Excel holds an old list of functions, see below.",
      "Colleagues without Retort always meet it sooner or later. Give them a copy from the Share tab.",
    ],
  },
  {
    sign: "#BUSY!",
    remedy: [
      "A flicker of it is normal: Excel shows it until the answer is there.",
      "If it stays for a minute, Excel cannot fetch functions.js: check the connection and that the host's address opens in a browser, then close all workbooks and open Excel again.",
      "Long columns take longer. Give the filled rows, not whole columns such as A:A; Excel on the web may refuse those with #CALC!.",
    ],
  },
  {
    sign: "The old version is still there",
    remedy: [
      "Excel keeps the list of functions for up to 24 hours. A manifest.xml with a higher version, uploaded again where you installed it, shows at once.",
      "On the web: clear the browser's data for Excel, then upload manifest.xml again.",
      "On Windows: close all of Office and delete what is in %LOCALAPPDATA%\\Microsoft\\Office\\16.0\\Wef",
      "On a Mac: quit Excel and delete what is in ~/Library/Containers/com.microsoft.Excel/Data/Library/Caches",
    ],
  },
  {
    sign: "Blocked by the school or employer",
    remedy: [
      "Where Upload My Add-in is missing, only an administrator can add Retort: show them this page.",
      "Meanwhile the local workbook needs no Excel and no account: ask whoever hosts Retort for its link.",
    ],
  },
  {
    sign: "The pane stays empty or says that it could not reach a library",
    remedy: [
      "The network blocks https://appsforoffice.microsoft.com or the host's address. Ask who runs it, or ask the host for a build with Microsoft's library beside the add-in.",
    ],
  },
];
