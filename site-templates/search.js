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
  // What forms of a word have in common, by the language of the page.
  var endings = {
    en: function (w) { return lunr.stemmer(new lunr.Token(w, {})).toString(); },
    es: function (w) { return w.length < 5 ? w : w.replace(/ces$/, 'z').replace(/(?:[aeo]s|[aeos])$/, ''); },
    ar: function (w) {
      if (w.length > 4) w = w.replace(/^\u0648/, '');
      return w.replace(/(..)(?:\u0647\u0627|\u0627\u062a|\u0627\u0646|\u0648\u0646|\u064a\u0646|\u0646\u0627|\u064a\u0647)$/, '$1')
        .replace(/(...)[\u0627\u0643\u0647\u064a]$/, '$1');
    }
  };
  function stems(text, language) {
    var stem = endings[language.slice(0, 2)];
    return stem ? words(text).map(stem) : words(text);
  }
  // Rows of title, further names and text.
  function build(rows, language) {
    var b = new lunr.Builder();
    b.ref('n');
    b.field('t', {boost: 6});
    b.field('k', {boost: 4});
    b.field('x');
    b.tokenizer = function (text) {
      return stems(text, language).map(function (w) { return new lunr.Token(w, {}); });
    };
    rows.forEach(function (row, n) { b.add({n: n, t: row[0], k: row[1], x: row[2]}); });
    return JSON.stringify(b.build());
  }
  function open(json) { return lunr.Index.load(json); }
  // A word as it stands or in another form; only where there is none, one that begins so or has a slip in it.
  // Slips in a long word take long to try, and whoever writes one did not slip once or twice.
  function find(index, stem) {
    var found = index.query(function (q) { q.term(stem); });
    return found.length ? found : index.query(function (q) {
      q.term(stem, {boost: 8, wildcard: lunr.Query.wildcard.TRAILING});
      if (stem.length > 3 && stem.length < 25) q.term(stem, {editDistance: stem.length > 7 ? 2 : 1});
    });
  }
  // The best first: what has more of the words that were asked for, and in its title. Of a text that
  // is no question any more, as an address may carry, only the beginning counts.
  function ask(index, text, language) {
    var asked = stems(text.slice(0, 150), language).slice(0, 10).filter(function (w, i, all) { return all.indexOf(w) === i; });
    var places = {};
    asked.forEach(function (stem) {
      find(index, stem).forEach(function (r) {
        var place = places[r.ref] || (places[r.ref] = {n: +r.ref, score: 0, has: 0, words: []});
        place.score += r.score;
        place.has++;
        place.words = place.words.concat(Object.keys(r.matchData.metadata));
      });
    });
    var found = Object.keys(places).map(function (ref) {
      var place = places[ref];
      place.score *= place.has / asked.length;
      return place;
    }).sort(function (a, b) { return b.score - a.score || a.n - b.n; });
    return found.filter(function (p) { return p.score >= found[0].score / 20; }).slice(0, 12);
  }
  return {fold: fold, words: words, stems: stems, build: build, open: open, ask: ask};
})();
