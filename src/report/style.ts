/** How a report looks on screen and on paper: black on white, nothing smaller than 8 points, margins that both A4 and Letter have. */
export const STYLE = `
@page { margin: 9mm 12mm 10mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 0 4mm; max-width: 194mm; color: #000; background: #fff; font: 9pt/1.25 Arial, "Liberation Sans", Helvetica, sans-serif; }
h1 { font-size: 14pt; margin: 0 0 1mm; overflow-wrap: anywhere; }
h2 { font-size: 10.5pt; margin: 1.6mm 0 0.6mm; border-bottom: 0.8pt solid #000; break-after: avoid; }
p { margin: 0.6mm 0; overflow-wrap: anywhere; }
.state, .note, footer { font-size: 8pt; }
.state { font-weight: bold; }
.answer { border: 1.2pt solid #000; padding: 0.8mm 2mm; margin: 1mm 0; break-inside: avoid; }
.answer p:first-child { font-size: 11pt; font-weight: bold; }
.failed { font-weight: bold; text-decoration: underline; text-underline-offset: 1.5pt; }
dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(56mm, 1fr)); gap: 0.3mm 4mm; margin: 1mm 0; }
dl > div { break-inside: avoid; overflow-wrap: anywhere; }
dt, dd { display: inline; margin: 0; }
dt { color: #333; }
dt::after { content: ": "; }
dd { font-weight: 600; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; margin: 0.4mm 0 0.8mm; font-size: 8.5pt; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: bold; padding-bottom: 0.4mm; break-after: avoid; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { padding: 0.15mm 1.2mm; line-height: 1.15; border-bottom: 0.4pt solid #999; text-align: left; vertical-align: top; }
th { font-weight: 600; }
tbody th, td.verdict { white-space: nowrap; }
caption small, .none { font-size: 8pt; font-weight: normal; }
thead th, thead td { border-bottom: 0.9pt solid #000; vertical-align: bottom; }
td.number { text-align: right; white-space: nowrap; }
tr.total th, tr.total td { font-weight: bold; border-bottom: 0.9pt solid #000; }
td.gap { text-align: center; font-style: italic; }
code { font: 8pt/1.25 ui-monospace, "Liberation Mono", Consolas, monospace; overflow-wrap: anywhere; }
.charts { display: flex; flex-wrap: wrap; gap: 2mm 1.8mm; }
figure { margin: 0; width: 258pt; max-width: 100%; break-inside: avoid; }
figcaption { font-weight: bold; }
figure svg { display: block; max-width: 100%; height: auto; font-family: inherit; }
ul { margin: 0.8mm 0; padding-left: 4.5mm; }
.key { list-style: none; padding: 0; font-size: 8pt; display: flex; flex-wrap: wrap; gap: 0 4mm; }
.key svg { display: inline-block; vertical-align: -1.5pt; }
.small { font-size: 8pt; line-height: 1.2; columns: 2; column-gap: 6mm; }
.small li { overflow-wrap: anywhere; }
.tables { display: flex; flex-wrap: wrap; gap: 0 8mm; }
.tables > div { max-width: 100%; }
footer { border-top: 0.6pt solid #000; margin-top: 1.5mm; padding-top: 0.6mm; }
table.many { font-size: 8pt; }
.many th, .many td { padding: 0.15mm 0.6mm; }
.many tbody th { white-space: normal; }
.many td:last-child { min-width: 21mm; }
.kept { break-inside: avoid; }
.close { font-size: 8pt; line-height: 1.15; }
.close h2 { font-size: 9.5pt; margin: 1mm 0 0.4mm; }
.close p, .close dl { margin: 0.4mm 0; }
.close table { font-size: 8pt; margin-bottom: 0.5mm; }
.close th, .close td { padding: 0.1mm 0.9mm; line-height: 1.1; }
.close .answer { margin: 0.6mm 0; padding: 0.4mm 2mm; }
.close .answer p:first-child { font-size: 10pt; }
.close .tables { gap: 0 6mm; }
.close .charts { gap: 1mm 1.8mm; }
.close .small { line-height: 1.1; margin: 0.4mm 0; }
.close footer { margin-top: 0.8mm; padding-top: 0.3mm; }
@media (max-width: 150mm) { .small { columns: 1; } }
@media print { body { padding: 0; max-width: none; } .wide { overflow: visible; } }
`;
// The file's own style is all it needs; scripts, pictures, fonts and forms are refused.
export const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";
