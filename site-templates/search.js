// What is a word, how the index is built, and how it is asked. The press runs this too.
var lookup = (function () {
  // Without case, accents and the signs of Arabic vowels; forms of one letter become one.
  function fold(text) {
    return text.normalize('NFD').replace(/[\u0300-\u036f\u0640\u064b-\u065f\u0670]/g, '')
      .replace(/\u0649/g, '\u064a').replace(/\u0629/g, '\u0647')
      .replace(/[\u0660-\u0669]/g, function (d) { return d.charCodeAt(0) - 0x660; })
      .toLowerCase();
  }
  var between = /[^0-9a-z\u00c0-\u05ff\u0620-\u1fff\u2c00-\u2fff\u3040-\ud7ff\uf900-\ufdff\ufe70-\uffdc]+/;
  // The Arabic article is no part of the word.
  var article = /^(?:[\u0648\u0641]?[\u0628\u0643]?\u0627\u0644|\u0648?\u0644\u0644)(?=..)/;
  function words(text) {
    return fold(text).split(between).filter(Boolean).map(function (w) { return w.replace(article, ''); });
  }
  // Rows of title, further names and text.
  function build(rows) {
    var b = new lunr.Builder();
    b.ref('n');
    b.field('t', {boost: 6});
    b.field('k', {boost: 4});
    b.field('x');
    b.tokenizer = function (text) {
      return words(text).map(function (w) { return new lunr.Token(w, {}); });
    };
    rows.forEach(function (row, n) { b.add({n: n, t: row[0], k: row[1], x: row[2]}); });
    return JSON.stringify(b.build());
  }
  function open(json) { return lunr.Index.load(json); }
  // The best first; a word counts most as it stands, less as a beginning, least with a slip in it.
  function ask(index, text) {
    var asked = words(text).slice(0, 10);
    if (!asked.length) return [];
    var found = index.query(function (q) {
      asked.forEach(function (w) {
        q.term(w, {boost: 20});
        q.term(w, {boost: 8, wildcard: lunr.Query.wildcard.TRAILING});
        if (w.length > 4) q.term(w.slice(0, w.length > 6 ? -3 : -1), {boost: 3, wildcard: lunr.Query.wildcard.TRAILING});
        if (w.length > 3) q.term(w, {editDistance: w.length > 7 ? 2 : 1});
      });
    });
    return found.filter(function (r) { return r.score >= found[0].score / 5; }).slice(0, 12).map(function (r) {
      return {n: +r.ref, words: Object.keys(r.matchData.metadata)};
    });
  }
  return {fold: fold, words: words, build: build, open: open, ask: ask};
})();
