/** The layout of the bare build. */
export function plainPage({ it, content }: { it: { title: string }; content: string }): string {
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>${it.title}</title></head>
<body><main data-pagefind-body>${content}</main></body>
</html>
`;
}
