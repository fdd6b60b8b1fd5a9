/** Who installs Retort, what each does in what order, and what is worth knowing before. */
export interface Reader {
  readonly heading: string;
  readonly before: string;
  readonly steps: readonly string[];
}

export const CHECK = 'Type =RETORT.MOLARMASS("CaCO3") in a cell. It shows 100.086.';
const GET_MANIFEST = "Get the file manifest.xml from whoever hosts Retort for you, and save it on this computer.";

/** Menu paths: Office Add-ins documentation on sideloading and on the Microsoft 365 admin center; Excel words its menus anew now and then. */
export const readers: readonly Reader[] = [
  {
    heading: "For yourself, in Excel on the web",
    before: "This browser alone remembers the add-in: do it again in another browser, on another computer, or after clearing the browser's data.",
    steps: [
      GET_MANIFEST,
      "Open a workbook in Excel on the web.",
      "Choose Home > Add-ins > More Settings.",
      "Choose Upload My Add-in, browse to manifest.xml and choose Upload. If it is missing or greyed out, your school or employer has switched it off: see First aid.",
      CHECK,
      "Retort stands on the Home tab. Open it once, so that Excel fetches everything.",
    ],
  },
  {
    heading: "For yourself, in Excel on Windows",
    before:
      "Microsoft means this way for trying things out: it may want Retort added again in a new workbook. If somebody administers your Excel, ask for the way of a school or lab instead. Excel of Microsoft 365, or Excel 2021 or later, is needed.",
    steps: [
      GET_MANIFEST,
      "Put it into a folder, share that folder with yourself (Properties > Sharing) and note its network path, such as \\\\MYPC\\retort.",
      "In Excel choose File > Options > Trust Center > Trust Center Settings > Trusted Add-in Catalogs.",
      "Enter the network path as Catalog Url, choose Add catalog, tick Show in Menu, choose OK twice and close Excel.",
      "Open Excel again and choose Home > Add-ins > More Add-ins > Shared Folder.",
      "Choose Retort and Add.",
      CHECK,
    ],
  },
  {
    heading: "For yourself, in Excel on a Mac",
    before: "Excel of Microsoft 365, or Excel 2021 or later, is needed.",
    steps: [
      GET_MANIFEST,
      "In the Finder choose Go > Go to Folder and enter ~/Library/Containers/com.microsoft.Excel/Data/Documents",
      "Make a folder named wef there, unless there is one, and put manifest.xml into it.",
      "Quit Excel, open it again and open a workbook.",
      "Choose Home > Add-ins and pick Retort under Developer Add-ins.",
      CHECK,
    ],
  },
  {
    heading: "For a school or a lab, as its administrator",
    before:
      "Everybody assigned gets Retort on the Home tab in Excel on Windows, on Macs and on the web without doing anything. It can take up to 24 hours. A SharePoint app catalog does not work: it knows no cell functions. Nor do iPads.",
    steps: [
      "Let somebody host Retort, or take an address that you trust: whoever hosts it could change what it calculates.",
      "Let your network reach that address and, unless the host built Retort for closed networks, https://appsforoffice.microsoft.com.",
      "Sign in to https://admin.microsoft.com and choose Settings > Integrated apps > Upload custom apps.",
      "Choose Office Add-in, then upload manifest.xml, or give its address.",
      "Assign it to yourself first, then to a class or to everyone.",
      "Accept the permission it asks for: to read and write the open workbook. Retort sends nothing anywhere.",
      CHECK,
      "For an update upload the new manifest.xml in the same place: its higher version makes Excel fetch the new list of functions.",
    ],
  },
  {
    heading: "For whoever hosts it",
    before: "Any web server that hands out files will do; nothing runs on it. You need Node 20 or later to build.",
    steps: [
      "Choose an https address with a certificate that browsers trust, such as https://example.org/retort. A folder below the top is fine.",
      "Build for it: ADDIN_URL=https://example.org/retort npm run build (in PowerShell: $env:ADDIN_URL='https://example.org/retort'; npm run build). In a closed network add OFFICE_JS=local, which puts Microsoft's library beside the add-in.",
      "Upload everything in dist/addin, hidden files too, to that address.",
      "Set the headers below. Without Access-Control-Allow-Origin Excel on the web shows no functions. Do not send X-Frame-Options: Excel shows the pages in a frame.",
      "Open the address followed by /help/index.html and /functions.json in a browser: both must show without a warning.",
      "Give people the address followed by /manifest.xml, and this page.",
      "For an update build again and upload over what is there. Leave the older files of the folder hashed for some days: pages that are open still ask for them.",
      "Upload dist/workbench the same way, if you like, to an address of its own: a link to it opens the local workbook, without Excel, and after the first visit without a network.",
    ],
  },
];
