// Keeps a copy of one customer's pages, so that they open without a network. The network comes first,
// so that new dates are seen at once; the copy stands in where it does not answer. VERSION and FILES
// stand before this text and change with any of the pages.
(function () {
var here = self.registration.scope, name = here + VERSION;
function plain(url) { return String(url).split(/[?#]/)[0].replace(/index\.html$/, ""); }
function put(store, url, answer) {
if (answer.ok) return store.put(plain(url), answer);
if (answer.status === 404 || answer.status === 410) return store.delete(plain(url));
}
self.addEventListener("install", function (event) {
event.waitUntil(caches.open(name).then(function (store) {
return Promise.all(FILES.map(function (file) {
var url = new URL(file, here);
return fetch(url, { cache: "no-cache" }).then(function (answer) { return put(store, url, answer); });
}));
}).then(function () { return self.skipWaiting(); }));
});
self.addEventListener("activate", function (event) {
event.waitUntil(caches.keys().then(function (names) {
return Promise.all(names.map(function (old) {
if (old.indexOf(here) === 0 && old !== name) return caches.delete(old);
}));
}).then(function () { return self.clients.claim(); }));
});
self.addEventListener("fetch", function (event) {
var asked = event.request;
if (asked.method !== "GET" || asked.url.indexOf(here) !== 0) return;
event.respondWith(caches.open(name).then(function (store) {
return fetch(asked, { cache: "no-cache" }).then(function (answer) {
event.waitUntil(Promise.resolve(put(store, asked.url, answer.clone())));
return answer;
}, function (lost) {
return store.match(plain(asked.url)).then(function (copy) {
if (copy) return copy;
throw lost;
});
});
}));
});
})();
