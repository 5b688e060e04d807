// A small server of a folder under another base path, as a dealer's host would be: compressed, with a way to fail.
import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

export const BASE = '/some/base/';
const types = { '.html': 'text/html; charset=utf-8', '.css': 'text/css', '.js': 'text/javascript', '.svg': 'image/svg+xml', '.png': 'image/png', '.webmanifest': 'application/manifest+json' };

/** Serves `state.folder` until `state.left` answers were given; `state.change` may alter what is sent. Port 0 takes any. */
export async function serve(state, port = 0) {
  const server = createServer((request, response) => {
    const path = new URL(request.url, 'http://x').pathname.slice(BASE.length).replace(/(^|\/)$/, '$1index.html');
    if (state.left !== undefined && state.left-- <= 0) {
      state.died = true;
      return request.socket.destroy();
    }
    try {
      const read = () => readFileSync(join(state.folder, path));
      const bytes = state.change?.(path, read) ?? read();
      const headers = { 'content-type': types[extname(path)] ?? 'application/octet-stream', 'cache-control': 'no-cache', 'content-encoding': 'gzip' };
      response.writeHead(200, headers).end(gzipSync(bytes));
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((done) => server.listen(port, '127.0.0.1', done));
  return {
    port: server.address().port,
    stop: () => new Promise((done) => { server.close(done); server.closeAllConnections(); }),
  };
}
