// Adds what only a clock and a choice can know. Every date already stands in the page; this hides and
// shows what is there, and writes "in 19 hours". It compares instants, so the phone's time zone and
// the way it writes dates never matter. Where the car stands, k, decides which of several is shown.
(() => {
var ends = {}, all = s => [...document.querySelectorAll(s)], root = document.documentElement;
var own = document.currentScript.src, also = document.querySelector(".also"), M = 60, H = 60 * M, D = 24 * H, k = 0;
var list = document.querySelector(".rows"), start = list ? +list.dataset.start : 0;
var rows = all(".rows li"), inOrder = [...rows], radios = all("[name=parking]"), kept = "parked " + location.pathname, rel;
try { rel = new Intl.RelativeTimeFormat(root.lang + "-u-nu-latn"); } catch (e) { rel = null; }
function away(left) {
if (!rel || left <= 0) return "";
if (left < 90 * M) return rel.format(Math.ceil(left / M), "minute");
if (left < 48 * H) return rel.format(Math.ceil(left / H), "hour");
return rel.format(Math.round(left / D), "day");
}
rows.forEach(e => ends[e.dataset.hold] = e.dataset.end);
function show(e, on) { if (e.hidden === on) e.hidden = !on; }
function isOf(e) { return e.dataset.p.split(" ").includes(k + ""); }
// An instant of the case, or the name of the row that ends then; a mark without one goes by the end of its row.
function at(e, name) {
var d = e.dataset, times = d[name] || name in d && e.closest("[data-end]").dataset.end || "";
times = (ends[times] || times).split(",");
return +(times[k] || times[0]);
}
// What the row of the first answer says of danger, and how far it is set by then, stands with the answer.
function say(hold) {
if (also.dataset.hold === hold) return;
also.dataset.hold = hold;
also.textContent = "";
rows.filter(e => e.dataset.hold === hold).forEach(row => {
also.dataset.end = row.dataset.end;
row.querySelectorAll(".safety,.set").forEach(e => also.append(e.cloneNode(true), " "));
});
}
function tick() {
var now = Date.now() / 1000, first;
function past(e, name) { var t = at(e, name); return t && now >= t; }
// What is over by the pickup comes last, then what ranks first, then what ends first.
function order(e) { return (at(e, "end") <= start ? 1e14 : 0) + Math.min(e.dataset.rank, 999) * 1e11 + at(e, "end"); }
all("[data-answer]").forEach(e => {
if (!past(e, "end") && (!first || !first.dataset.end || e.dataset.end && order(e) < order(first))) first = e;
});
say(first.dataset.answer);
all("[data-p],[data-from],[data-to]").forEach(e => {
var d = e.dataset;
show(e, (!d.p || isOf(e)) && (!("from" in d) || past(e, "from")) && !past(e, "to"));
});
all("[data-answer]").forEach(e => show(e, e === first));
all("[data-of]").forEach(e => show(e, e.dataset.of === first.dataset.answer));
all(".rel .in").forEach(e => {
var text = away(at(first, "end") - now);
if (e.textContent !== text) e.textContent = text;
show(e, text !== "");
});
rows.forEach(e => {
var x = (now - e.parentNode.dataset.start) / e.parentNode.dataset.span, mark = e.querySelector(".at");
var likely = e.querySelector("small"), sure = at(e, "sure"), end = at(e, "end");
e.classList.toggle("over", now >= end);
// A date without its year would be taken for one ahead.
e.classList.toggle("old", now > end + 180 * 86400);
if (likely) show(likely, now < end && (x * 100 < sure || sure >= 100));
e.classList.toggle("first", e.dataset.hold === first.dataset.answer);
// What is beyond the line of time stands at its end, where the bars are broken.
mark.setAttribute("x", Math.min(x, 1) * 100 + "%");
mark.setAttribute("display", x >= 0 && !past(e, "end") ? "inline" : "none");
});
if (list) all(".axis,.dated").forEach(e => show(e, rows.some(row => !past(row, "end"))));
var sorted = [...inOrder].sort((a, b) => past(a, "end") - past(b, "end") || at(a, "end") - at(b, "end"));
if (sorted.some((e, i) => e !== rows[i])) {
rows = sorted;
if (rows[0]) rows[0].parentNode.append(...rows);
}
}
// A line of a calendar, broken where it has more than 75 bytes (RFC 5545 section 3.1).
function folded(line) {
var text = "", bytes = 0;
for (var letter of line) {
var more = new TextEncoder().encode(letter).length;
if (bytes + more > 75) {
text += "\r\n ";
bytes = 1;
}
text += letter;
bytes += more;
}
return text;
}
// Sets the dates and bars of a case.
function park(number) {
k = number;
rows.forEach(e => {
var list = e.parentNode.dataset, end = at(e, "end");
function part(t) { return Math.max(0, Math.min(1, (t - list.start) / list.span)) * 100 + "%"; }
e.querySelector(".may").setAttribute("width", part(end));
e.querySelector(".sure").setAttribute("width", at(e, "sure") + "%");
e.querySelectorAll(".cut").forEach(cut => cut.setAttribute("display", end - list.start > +list.span ? "inline" : "none"));
e.querySelector("time").dateTime = new Date(end * 1000).toISOString();
});
// Words that stand once for all places where they are said.
all("[data-g]:not([data-p])").forEach(e => {
var of = document.querySelector("[data-p][data-g='" + e.dataset.g + "']");
while (of && of.dataset && of.dataset.p && !isOf(of)) of = of.nextSibling;
e.textContent = of && of.dataset && of.dataset.p ? of.textContent : "";
});
all("#chosen").forEach(e => {
var ics = JSON.parse(document.getElementById("ics").textContent);
// Dates of another parking go into the link itself (RFC 2397).
var runs = ics.cases[k], text = "";
for (var i = 0; i < runs.length; i += 2) for (var n = runs[i]; n <= runs[i + 1]; n++) text += folded(ics.lines[n]) + "\r\n";
e.href = "data:text/calendar;charset=utf-8," + encodeURIComponent(text).replace(/'/g, "%27");
show(e, k > 0);
});
all("[data-answer] time").forEach(e => {
e.dateTime = new Date(at(e.closest("[data-end]"), "end") * 1000).toISOString();
});
tick();
}
all("#parking fieldset").forEach(e => show(e, true));
all(".still").forEach(e => e.remove());
radios.forEach((e, i) => {
e.onchange = () => {
try { localStorage[kept] = e.value; } catch (x) {}
park(i);
};
try { if (localStorage[kept] === e.value) e.checked = true; } catch (x) {}
});
// The guides that this page leads to tell this car's dates, as long as those need no year.
document.onclick = () => {
var dates = {}, comma = root.dir === "rtl" ? "\u060C " : ", ";
var shown = e => e && !e.hidden ? [...e.childNodes].filter(n => !n.hidden).map(n => n.textContent).join("").trim() : "";
rows.filter(e => !e.matches(".old")).forEach(e => {
var parts = ["b", "[data-to]"].map(s => shown(e.querySelector("time " + s)));
dates[e.dataset.hold] = [parts.filter(part => part).join(comma), parts[0], at(e, "end")];
});
try { sessionStorage.car = JSON.stringify({ lang: root.lang, page: location.href, dates }); } catch (e) {}
};
// Keeps a copy for where there is no network; browsers allow that on safe addresses only, and on a
// disk they would complain of the manifest. In a frame that is shut off there is nothing to keep.
var app = document.querySelector("[rel=alternate]");
if (app && location.host && origin !== "null") {
app.rel = "manifest";
var workers = navigator.serviceWorker;
if (workers) {
workers.register(new URL("../../offline.js", app.href)).then(() => workers.ready).then(found => {
all(".kept").forEach(e => show(e, true));
found.active.postMessage(["./", "care.ics", "all.ics", app.href, document.querySelector("[rel=stylesheet]").href, own, document.querySelector("image").href.baseVal, ...all(".logo").map(e => e.src), ...all(".guide a").map(e => e.href)].map(file => new URL(file, app.href).href));
}).catch(() => {});
}
}
var chosen = radios.findIndex(e => e.checked);
if (chosen > 0) park(chosen);
tick();
root.classList.add("ready");
setInterval(tick, 1e4);
document.addEventListener("visibilitychange", tick);
addEventListener("pageshow", tick);
})();
