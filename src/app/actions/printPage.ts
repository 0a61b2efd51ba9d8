/**
 * Prints a self-contained HTML page. It is laid out in a frame whose own policy allows the page's
 * inline styles and its pictures, and nothing else; the workbench's policy allows neither.
 */
export async function printPage(html: string): Promise<void> {
  document.querySelector('iframe.paper')?.remove();
  const frame = document.createElement('iframe');
  frame.className = 'paper';
  frame.title = 'What is printed';
  frame.setAttribute('aria-hidden', 'true');
  frame.tabIndex = -1;
  const loaded = new Promise((resolve) => frame.addEventListener('load', resolve, { once: true }));
  frame.src = 'paper.html';
  document.body.append(frame);
  await loaded;
  const paper = frame.contentDocument;
  if (!paper || !frame.contentWindow) return;
  paper.documentElement.innerHTML = html.replace(/^[\s\S]*?<html[^>]*>|<\/html>\s*$/g, '');
  await Promise.all([...paper.images].map((image) => image.decode().catch(() => {})));
  frame.contentWindow.print();
}
