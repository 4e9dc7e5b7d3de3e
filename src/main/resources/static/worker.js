// Keeps the last week sheet, the Log, the shot list and the sheet for a new note of the person who is chosen, with what they are
// drawn with, and shows them where the server is out of reach. Everything else goes to the server as if this were not here.
"use strict";
const SHEETS = "sheets";
const MARK = "/kept-for";
const PATIENCE = 6000;

const isPaint = (path) => path.startsWith("/css/") || (path.startsWith("/static/") && path !== "/static/worker.js");

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (e) => e.waitUntil(self.clients.claim()));

async function kept() {
  const mark = await (await caches.open(SHEETS)).match(MARK);
  return mark ? mark.json() : { whose: "", at: 0, pages: [] };
}

// A page says whose it is: what was kept for somebody else is thrown away, and once an hour all is fetched anew.
self.addEventListener("message", (e) => {
  if (e.data && e.data.whose) e.waitUntil(prepare(e.data));
});

async function prepare({ whose, pages }) {
  const before = await kept();
  if (before.whose !== whose) await caches.delete(SHEETS);
  else if (Date.now() - before.at < 3600000) return;
  const cache = await caches.open(SHEETS);
  try {
    for (const page of pages) {
      const answer = await fetch(page, { redirect: "manual", headers: { Accept: "text/html" } });
      if (!answer.ok) continue;
      const text = await answer.clone().text();
      const paint = [...new Set(Array.from(text.matchAll(/(?:href|src)="(\/(?:css|static)\/[^"]+)"/g), (found) => found[1]))];
      await Promise.all(paint.map(async (one) => {
        const drawn = await fetch(one);
        if (drawn.ok) await cache.put(one, drawn);
      }));
      await cache.put(page, answer);
    }
    await cache.put(MARK, new Response(JSON.stringify({ whose, pages, at: Date.now() })));
    for (const client of await self.clients.matchAll()) client.postMessage("kept");
  } catch (e) { /* out of reach meanwhile: asked again with the next page */ }
}

const late = (promise) => Promise.race([promise, new Promise((done, fail) => setTimeout(() => fail(new Error("late")), PATIENCE))]);

const NOTHING = "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">"
  + "<title>Out of reach</title><link rel=\"stylesheet\" href=\"/css/base.css\"><div class=\"sheet\"><main><h1>The server is out of"
  + " reach</h1><p>This sheet is not kept on this device. These are: <a href=\"/week\">the week</a>, <a href=\"/log\">Log</a>,"
  + " <a href=\"/week/shots\">the shot list</a>.</p></main></div></html>";
const outOfReach = () => new Response(NOTHING, { status: 503, headers: { "Content-Type": "text/html; charset=utf-8" } });

// What the server has answered is shown whether it can be kept or not: there may be no room, or all was thrown away meanwhile.
const quietly = (promise, instead) => promise.catch(() => instead);

// A line that is said once is not kept: shown again without the server, it would look as if it had just been done.
const saysOnce = async (answer) => (await answer.text()).includes('<div class="flash"');

const keep = (path, answer) => quietly(caches.open(SHEETS).then((cache) => cache.put(path, answer)));
const forget = () => quietly(caches.delete(SHEETS));
const found = (path) => quietly(caches.match(path, { cacheName: SHEETS }));

async function sheet(request, path) {
  const { pages, whose } = await quietly(kept(), { whose: "", pages: [] });
  const wanted = pages.includes(path) && !new URL(request.url).search;
  const asked = fetch(request);
  let answer;
  try {
    answer = await (wanted ? late(asked) : asked);
  } catch (e) {
    // what is slow is waited for where nothing is kept that could stand in for it
    return await found(path) || quietly(asked, outOfReach());
  }
  if (wanted && !answer.ok && answer.status < 500) await forget();
  if (wanted && whose && answer.ok && !answer.redirected && answer.type === "basic" && !await saysOnce(answer.clone())) {
    await keep(path, answer.clone());
  }
  return answer;
}

async function paint(request, path) {
  try {
    const answer = await fetch(request);
    if (answer.ok) await keep(path, answer.clone());
    return answer;
  } catch (e) {
    return await found(path) || Response.error();
  }
}

self.addEventListener("fetch", (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== "GET" || url.origin !== self.location.origin) return;
  if (e.request.mode === "navigate" && url.pathname === "/account/log-in") e.waitUntil(forget());
  if (e.request.mode === "navigate" && !url.pathname.startsWith("/public")) e.respondWith(sheet(e.request, url.pathname));
  else if (isPaint(url.pathname)) e.respondWith(paint(e.request, url.pathname));
});
