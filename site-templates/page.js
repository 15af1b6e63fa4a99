// Adds what only a clock can know. Every date already stands in the page; this hides and shows
// what is there, and writes "in 19 hours". It compares instants, so the phone's time zone and the
// way it writes dates never matter.
(() => {
var all = s => document.querySelectorAll(s);
var M = 60, H = 60 * M, D = 24 * H;
var rel;
try { rel = new Intl.RelativeTimeFormat(document.documentElement.lang); } catch (e) { rel = null; }
function away(left) {
if (!rel || left <= 0) return "";
if (left < 90 * M) return rel.format(Math.ceil(left / M), "minute");
if (left < 48 * H) return rel.format(Math.ceil(left / H), "hour");
return rel.format(Math.round(left / D), "day");
}
function set(e, text) { if (e.textContent !== text) e.textContent = text; }
function show(e, on) { if (e.hidden === on) e.hidden = !on; }
function tick() {
var now = Date.now() / 1000;
function past(at) { return at && now >= at; }
var first, shown = 0, next;
all("[data-from],[data-to]").forEach(e => {
var from = e.dataset.from;
show(e, (!from || past(from)) && !past(e.dataset.to));
});
all("[data-answer]").forEach(e => {
var open = !first && !past(e.dataset.end);
if (open) first = e;
show(e, open);
});
all("[data-next]").forEach(e => {
var on = shown < 6 && !past(e.dataset.end) && first.dataset.answer !== e.dataset.next;
show(e, on);
e.className = shown < 3 ? "" : "wide";
if (on) shown++;
next = next || on;
});
all(".then h2").forEach(function (e) { show(e, !!next); });
all("[data-in]").forEach(e => {
var text = away(+e.dataset.in - now);
set(e, e.dataset.before + " " + text);
show(e, text !== "");
});
all(".strip").forEach(e => {
var part = (now - e.dataset.start) / e.dataset.span, g = e.querySelector("#today");
if (part < 0 || part > 1) { g.setAttribute("display", "none"); return; }
var x = Math.sqrt(part) * 100, text = g.lastElementChild;
text.setAttribute("text-anchor", x > 85 ? "end" : x < 15 ? "start" : "middle");
if (e.dataset.flip) x = 100 - x;
["x", "x1", "x2"].forEach(a => {
g.firstElementChild.setAttribute(a, x + "%");
text.setAttribute(a, x + "%");
});
g.removeAttribute("display");
});
}
// Opens the page of the parking that was chosen last, where the page is asked for anew. The way back
// ends in "#main": from there nobody is sent on, and the choice is forgotten. Where there is no choice
// or nothing can be kept, nothing happens.
try {
var home = all("#parking a")[0], kept = localStorage;
all("#parking a").forEach(function (a) {
if (a.ariaCurrent) { if (a !== home || location.hash) kept[home.pathname] = a; }
else if (home.ariaCurrent && kept[home.pathname] == a && !performance.navigation.type) location.replace(a);
});
} catch (e) {}
// Keeps a copy for where there is no network; browsers allow that on safe addresses only, and on a
// disk they would complain of the manifest.
var app = document.querySelector("[rel=alternate]");
if (app && location.host) {
app.rel = "manifest";
if (navigator.serviceWorker) navigator.serviceWorker.register(new URL("offline.js", app.href)).catch(show);
}
tick();
setInterval(tick, 1e4);
document.addEventListener("visibilitychange", tick);
addEventListener("pageshow", tick);
})();
