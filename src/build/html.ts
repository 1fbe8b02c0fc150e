/** Small helpers for pages that are written as text. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that may stand anywhere in HTML. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (c) => ENTITIES[c]!);

/** A whole page in the look of the product. `root` leads from the page to the folder that holds look.css. */
export const page = (title: string, body: string, root = '.'): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="${root}/look.css">
<link rel="stylesheet" href="${root}/help.css">
</head>
<body>
${body}
</body>
</html>
`;
