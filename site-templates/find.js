// Looks words up while they are typed, says how many places were found, keeps them in the address.
// What is searched is loaded when somebody starts to ask; its index is built then.
(function () {
  var index;
  var loading;
  var form = document.querySelector('form.ask');
  var field = form.elements.q;
  var hits = document.getElementById('hits');
  var list = document.getElementById('found');
  var said = document.getElementById('said');
  var tell = document.getElementById('tell');
  var waiting;
  var language = document.documentElement.lang;
  function node(name, text, inside) {
    var made = document.createElement(name);
    if (text) made.textContent = text;
    if (inside) inside.appendChild(made);
    return made;
  }
  // The stretch of the text around the first word found, with all words found marked.
  function snippet(text, words, into) {
    var pieces = text.split(/(\s+)/);
    var marks = pieces.map(function (p) {
      return lookup.stems(p, language).some(function (w) { return words.indexOf(w) >= 0; });
    });
    var at = Math.max(0, marks.indexOf(true) - 16);
    var end = Math.min(pieces.length, at + 56);
    if (at > 0) into.append('… ');
    for (var i = at; i < end; i++) {
      if (marks[i]) node('mark', pieces[i], into);
      else into.append(pieces[i]);
    }
    if (end < pieces.length) into.append(' …');
  }
  function load() {
    if (loading) return;
    loading = node('script', '', document.head);
    loading.onload = function () {
      index = lookup.build(volume.rows, language);
      show(false);
    };
    loading.onerror = function () { loading = null; };
    loading.src = 'find-index.js';
  }
  function show(address) {
    var asked = field.value.trim();
    if (asked) load();
    if (address) keep(asked);
    if (!index) return;
    var found = asked ? lookup.ask(index, asked, language) : [];
    list.textContent = '';
    found.forEach(function (hit) {
      var row = volume.rows[hit.n];
      var item = node('li', '', list);
      node('a', row[1], item).href = row[0];
      if (row[1] !== row[2]) {
        item.append(' ');
        node('i', row[2], item);
      }
      snippet(row[3], hit.words, node('p', '', item));
    });
    hits.hidden = !asked;
    said.textContent = asked ? volume.said[found.length] : '';
    tell.textContent = said.textContent;
  }
  function keep(asked) {
    try {
      history.replaceState(null, '', asked ? '?q=' + encodeURIComponent(asked) : location.pathname);
    } catch (e) {
      // Some browsers keep the address of a file as it is; the words are found all the same.
    }
  }
  function read() {
    field.value = new URLSearchParams(location.search).get('q') || '';
    show(false);
  }
  field.addEventListener('focus', load);
  field.addEventListener('input', function () {
    clearTimeout(waiting);
    waiting = setTimeout(show, 150, true);
  });
  form.addEventListener('submit', function (e) {
    e.preventDefault();
    clearTimeout(waiting);
    show(true);
  });
  window.addEventListener('popstate', read);
  read();
})();
