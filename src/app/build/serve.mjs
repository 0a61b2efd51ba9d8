// Serves dist/app on this machine only: `npm start`. Builds the app first when it is missing or old.
import { spawnSync } from 'node:child_process';
import { createReadStream, existsSync, readdirSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const app = join(root, 'dist/app');
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};
// OpenCV's generated glue builds functions from text; only the worker that runs it may.
const workerPolicy = "default-src 'none'; script-src 'self' 'unsafe-eval'; connect-src 'self'";
const isWorker = (path) => /[wW]orker-[\w-]+\.js$/.test(path);

/** Newest change below a folder, ms. */
function newest(folder) {
  if (!existsSync(folder)) return 0;
  const names = readdirSync(folder, { recursive: true });
  return Math.max(0, ...names.map((name) => statSync(join(folder, name)).mtimeMs));
}

const page = join(app, 'index.html');
const sources = Math.max(newest(join(root, 'src')), newest(join(root, 'samples')));
if (!existsSync(page) || statSync(page).mtimeMs < sources) {
  console.log('Building the workbench…');
  // Whoever starts this (a test runner) may have set NODE_ENV for itself.
  const env = { ...process.env, NODE_ENV: 'production' };
  const built = spawnSync('npm', ['run', '-s', 'build:app'], { cwd: root, env, stdio: 'inherit' });
  if (built.status !== 0) process.exit(built.status ?? 1);
}

const server = createServer((request, response) => {
  const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
  const wanted = normalize(join(app, path === '/' ? 'index.html' : path));
  const inside = wanted.startsWith(app) && existsSync(wanted) && statSync(wanted).isFile();
  if (!inside) {
    response.writeHead(404, { 'content-type': 'text/plain' }).end('Not here.');
    return;
  }
  const hashed = /\/assets\//.test(wanted);
  response.writeHead(200, {
    'content-type': types[extname(wanted)] ?? 'application/octet-stream',
    'content-length': statSync(wanted).size,
    'cache-control': hashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    ...(isWorker(wanted) ? { 'content-security-policy': workerPolicy } : {}),
  });
  createReadStream(wanted).pipe(response);
});

const port = Number(process.env.PORT ?? 4173);
server.on('error', (error) => {
  console.error(
    error.code === 'EADDRINUSE'
      ? `Port ${port} is taken. Choose another: PORT=4180 npm start`
      : error.message,
  );
  process.exit(1);
});
server.listen(port, '127.0.0.1', () => {
  const at = server.address();
  console.log(`The workbench is at http://localhost:${at.port}/ (Ctrl+C ends it)`);
});
