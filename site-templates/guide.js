// Where a guide quotes days, puts the dates of the car whose page led here. Without such a car, the
// days of this month; of what the car does not have, those of all months stay.
(function () {
  var months = JSON.parse(document.getElementById('months').textContent);
  var now = new Date();
  var car = null;
  var own = document.getElementById('own');
  try { car = JSON.parse(sessionStorage.car || 'null'); } catch (e) { car = null; }
  if (car && car.lang !== document.documentElement.lang) car = null;
  function date(name) {
    var dates = car.dates[name[1]];
    var text = dates && { until: dates[0], day: dates[1] }[name[2]];
    return text && now / 1000 >= dates[2] ? own.dataset.over.replace('{day}', text) : text;
  }
  document.querySelectorAll('[data-date]').forEach(function (e) {
    var text = car ? date(e.dataset.date.split('.')) : months[e.dataset.date][now.getMonth()];
    if (!text) return;
    var next = e.nextSibling;
    e.textContent = /\.$/.test(text) && next && /^\./.test(next.data) ? text.slice(0, -1) : text;
    if (car) own.hidden = false;
  });
  if (car) own.querySelector('a').href = car.page;
})();
