// What is a word, how the index is built, and how it is asked. The press counts the same words (SearchWords).
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
  // Words of a question that say little of what it is about, and the car, which all is about.
  var little = {
    en: 'a about after all am an and any are as at be been before but by can car could did do does don down for ' +
      'from get go got had has have how i if in into is it its just like ll long look looks m may me much must my ' +
      'need no normal not now of off ok okay on or our out over put re s seem seems should so some soon t take takes ' +
      'than that the their them then there they this till to too truck until up use used using ve vehicle want was ' +
      'we what when where which while who why will with would yet you your',
    es: 'a al algo antes asi aun auto carro coche como con cual cuando cuanta cuantas cuanto cuantos de debo del ' +
      'desde despues donde e el en es esa ese eso esta estan este esto estoy fue ha hace hacer hago hasta hay he ir ' +
      'la las le lo los mas me mi mis mucho muy necesito no normal o para pasa pero poner por porque pueda puede ' +
      'puedo que se sea ser si sin sobre su sus tan te tengo tiempo tiene todo tu un una uno usar va ve vea ver voy y ya yo',
    ar: 'هل متى كم كيف ماذا ما من في على عن إلى حتى أن إن يمكن يمكنني يجوز لي أنا هو هي هذا هذه ذلك مع بعد قبل لا لم ' +
      'لن قد أو ثم كل سيارة سيارتي أستعمل استعمال استخدام أستخدم طبيعي وقت أنتظر أين لماذا هناك أريد عند يكون كان أضع يبدو'
  };
  function saysLittle(language) {
    var list = stems(little[language.slice(0, 2)] || '', language);
    return function (stem) { return list.indexOf(stem) >= 0; };
  }
  // Rows of address, title, guide, text, and what else is typed for title and text. A name that the title has
  // already does not count twice.
  function build(rows, language) {
    var b = new lunr.Builder();
    b.ref('n');
    b.field('t', {boost: 6});
    b.field('k', {boost: 4});
    b.field('x');
    // A question says more than a heading, but is longer; and who says a word often may say little of it.
    b.b(0.3);
    b.k1(0.4);
    b.tokenizer = function (text) {
      return stems(text, language).map(function (w) { return new lunr.Token(w, {}); });
    };
    rows.forEach(function (row, n) {
      var title = stems(row[1], language);
      var names = words(row[4]).filter(function (w) { return title.indexOf(stems(w, language)[0]) < 0; });
      b.add({n: n, t: row[1], k: names.join(' '), x: row[3] + ' ' + row[5]}, {boost: /[?\u061f]$/.test(row[1]) ? 1.5 : 1});
    });
    return b.build();
  }
  function exactly(index, stem) { return index.query(function (q) { q.term(stem); }); }
  // A word as it stands or in another form; only where there is none, one that begins so or has a slip in it.
  // Slips in a long word take long to try, and whoever writes one did not slip once or twice.
  function find(index, stem) {
    var found = exactly(index, stem);
    return found.length ? found : index.query(function (q) {
      q.term(stem, {boost: 8, wildcard: lunr.Query.wildcard.TRAILING});
      if (stem.length > 3 && stem.length < 25) q.term(stem, {editDistance: stem.length > 7 ? 2 : 1});
    });
  }
  // The best first: what has more of the words that were asked for, the rare ones above all, and in its
  // title. Words that say little only break ties, where there are others. Of a text that is no question
  // any more, as an address may carry, only the beginning counts. Words may be written apart: car wash.
  function ask(index, text, language) {
    function once(w, i, all) { return all.indexOf(w) === i; }
    var apart = words(text.slice(0, 150));
    var joined = stems(apart.slice(1).map(function (w, i) { return apart[i] + w; }).join(' '), language)
      .slice(0, 10).filter(function (w) { return exactly(index, w).length; });
    var weak = saysLittle(language);
    var asked = stems(apart.join(' '), language).filter(once);
    var telling = joined.concat(asked.filter(function (w) { return !weak(w); })).filter(once);
    asked = telling.concat(asked.filter(weak)).slice(0, 10);
    var places = {};
    var whole = 0;
    asked.forEach(function (stem) {
      var tells = !telling.length || !weak(stem);
      var hits = find(index, stem);
      var weight = (tells ? 1 : 0.05) / Math.sqrt(hits.length || 1);
      whole += weight;
      hits.forEach(function (r) {
        var place = places[r.ref] || (places[r.ref] = {n: +r.ref, score: 0, has: 0, words: []});
        place.score += r.score * weight;
        place.has += weight;
        if (tells) place.words = place.words.concat(Object.keys(r.matchData.metadata));
      });
    });
    var found = Object.keys(places).map(function (ref) {
      var place = places[ref];
      place.score *= place.has / whole;
      // In steps of a sixth: between equals the order of reading decides.
      place.rank = Math.round(6 * Math.log(place.score));
      return place;
    }).filter(function (p) { return p.words.length; }).sort(function (a, b) { return b.rank - a.rank || a.n - b.n; });
    return found.filter(function (p) { return p.score >= found[0].score / 20; }).slice(0, 12);
  }
  return {fold: fold, words: words, stems: stems, build: build, ask: ask};
})();
