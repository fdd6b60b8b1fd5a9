/** Text as it may stand in HTML content or in a quoted attribute. */
export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** A whole reference page. Nothing but the page's own origin is ever loaded. */
export const page = (title: string, body: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)} – Retort</title>
<link rel="icon" href="../assets/icon-32.png">
<link rel="stylesheet" href="help.css">
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`;

export const table = (headings: readonly string[], rows: readonly (readonly string[])[]): string =>
  `<table>\n<thead><tr>${headings.map((heading) => `<th scope="col">${escaped(heading)}</th>`).join("")}</tr></thead>\n<tbody>\n${rows
    .map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join("")}</tr>`)
    .join("\n")}\n</tbody>\n</table>`;

export const code = (text: string): string => `<code>${escaped(text)}</code>`;
