// Keeps a copy of each customer's page that was opened, with its calendars, its style, script and picture, and the
// guides that it has no room for, so that all of it opens without a network. The network comes first, so that new dates are seen at once; the copy stands in where it
// does not answer, or not within PATIENCE, and says on its face that it is one, and of which day.
(function () {
var here = self.registration.scope, name = here + "kept", PATIENCE = 4000;
// The name of a copy: what comes after a page's address is of no matter to it.
function key(url) {
return url.indexOf(here + "C/") ? url.split("#")[0] : url.split(/[?#]/)[0].replace(/index\.html$/, "");
}
// The same answer with other headers; what its bytes were packed in is no more.
function remade(answer, body, day) {
var heads = new Headers(answer.headers);
heads.delete("content-encoding");
heads.delete("content-length");
if (day) heads.set("x-kept", day);
return new Response(body, { headers: heads });
}
function put(store, url, answer) {
if (answer.ok) return store.put(key(url), remade(answer, answer.body, String(Date.now())));
if (answer.status === 404 || answer.status === 410) return store.delete(key(url));
return Promise.resolve();
}
function fresh(asked) { return fetch(asked, { cache: "no-cache" }); }
// The page itself has the sentence to say, in its own language.
function shown(copy) {
if (!/html/.test(copy.headers.get("content-type"))) return copy;
return copy.text().then(function (html) {
var day = new Intl.DateTimeFormat((/<html[^>]* lang="?([\w-]+)/.exec(html) || [])[1] + "-u-nu-latn",
{ weekday: "long", day: "numeric", month: "long" }).format(new Date(+copy.headers.get("x-kept")));
var line = ((/ data-kept="([^"]*)"/.exec(html) || [])[1] || "").replace("{day}", day);
return remade(copy, !line ? html : html.replace(/<main[^>]*>/, function (main) {
return main + "<p class=card id=kept>" + line + "</p>";
}));
});
}
self.addEventListener("install", function () { self.skipWaiting(); });
self.addEventListener("activate", function (event) { event.waitUntil(self.clients.claim()); });
// A page names what to keep once it is open.
self.addEventListener("message", function (event) {
event.waitUntil(caches.open(name).then(function (store) {
return Promise.all(event.data.map(function (url) {
return fresh(url).then(function (answer) { return put(store, url, answer); }).catch(function () {});
}));
}));
});
self.addEventListener("fetch", function (event) {
var asked = event.request;
// What all pages share has another address for another text, so that its copy is never stale.
var shared = /^(below\.css|page\.js|car-\w+\.svg|logo\.(svg|png))\?/.test(asked.url.slice(here.length));
var mine = shared || !asked.url.indexOf(here + "C/");
if (asked.method !== "GET" || !mine && !/\.html$/.test(key(asked.url))) return;
event.respondWith(caches.open(name).then(function (store) {
return store.match(key(asked.url)).then(function (copy) {
if (shared && copy) return copy;
// An answer counts when all of it is here.
var network = fresh(asked).then(function (answer) {
return !mine && !copy ? answer : put(store, asked.url, answer.clone()).then(function () { return answer; }, function (lost) {
if (copy) throw lost;
return answer;
});
});
if (!copy) return network;
var late = new Promise(function (unused, fail) { setTimeout(fail, PATIENCE); });
return Promise.race([network, late]).catch(function () { return shown(copy); });
});
}));
});
})();
