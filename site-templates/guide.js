// Where a guide quotes days, puts the dates of the car whose page led here, else the days of this month.
(function () {
  var months = JSON.parse(document.getElementById('months').textContent);
  var month = new Date().getMonth();
  var car = null;
  var own = document.getElementById('own');
  try { car = JSON.parse(sessionStorage.car || 'null'); } catch (e) { car = null; }
  if (car && car.lang !== document.documentElement.lang) car = null;
  document.querySelectorAll('[data-date]').forEach(function (e) {
    var name = e.dataset.date.split('.');
    var dates = car && car.dates[name[1]];
    var date = dates && { until: dates[0], day: dates[1] }[name[2]];
    e.textContent = date || months[e.dataset.date][month];
    if (date) own.hidden = false;
  });
  if (car) own.querySelector('a').href = car.page;
})();
