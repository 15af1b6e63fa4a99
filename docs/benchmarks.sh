#!/bin/sh
# Times the program on shops made of the demo's jobs, and prints a table for docs/benchmarks.md.
#   sh docs/benchmarks.sh [JOBS...]      such as 100 1000; without, 100 and 1000
# Needs the built jar, sh, GNU time and awk. Works in a folder of its own and leaves nothing behind.
set -eu
cd "$(dirname "$0")/.."
jar=$PWD/target/curewindow.jar
demo=$PWD/content/demo
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
sizes=${*:-100 1000}

# line TEXT COMMAND...: the seconds, the processor's seconds and the memory of a command.
line() {
  text=$1
  shift
  /usr/bin/time -f '%e %U %S %M' -o "$work/time" "$@" >"$work/said" 2>&1 || { cat "$work/said"; exit 1; }
  awk -v text="$text" '{printf "| %s | %.1f | %.1f | %d |\n", text, $1, $2 + $3, $4 / 1024}' "$work/time"
}

# What puts all days of a job back; days are counted from March on, as its leap day then comes last.
earlier='
function count(y, m, d) {
  y -= m < 3; m = (m + 9) % 12
  return 365 * y + int(y / 4) - int(y / 100) + int(y / 400) + int((153 * m + 2) / 5) + d - 1
}
function day(n,  y, d, m) {
  y = int((10000 * n + 14780) / 3652425)
  d = n - (365 * y + int(y / 4) - int(y / 100) + int(y / 400))
  if (d < 0) { y--; d = n - (365 * y + int(y / 4) - int(y / 100) + int(y / 400)) }
  m = int((100 * d + 52) / 3060)
  return sprintf("%04d-%02d-%02d", y + (m > 9), (m + 2) % 12 + 1, d - int((306 * m + 5) / 10) + 1)
}
/^id: / { print "id: " id; next }
{
  out = ""
  while (match($0, /[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]/)) {
    then = substr($0, RSTART, 10)
    out = out substr($0, 1, RSTART - 1) day(count(substr(then, 1, 4) + 0, substr(then, 6, 2) + 0, substr(then, 9, 2) + 0) - back)
    $0 = substr($0, RSTART + 10)
  }
  print out $0
}
'

# shop JOBS DIR: the demo with that many jobs: copies of its own under other ids, each day ten earlier ones.
shop() {
  cp -r "$demo" "$2"
  n=$(ls "$2"/jobs/*.yaml | wc -l)
  while [ "$n" -lt "$1" ]; do
    for job in "$demo"/jobs/*.yaml; do
      [ "$n" -lt "$1" ] || break
      n=$((n + 1))
      awk -v id="W-$n" -v back=$((n / 10)) "$earlier" "$job" >"$2/jobs/W-$n.yaml"
    done
  done
}

java -jar "$jar" quick-start --out "$work" >"$work/said"
quick=$work/curewindow
[ -x "$quick" ] || quick=$(find "$work" -maxdepth 1 -type f -perm -u+x | head -1)
cp -r "$demo" "$work/demo"
echo "| what | seconds | processor | MB |"
echo "|---|---|---|---|"
line '`check` of the demo' java -jar "$jar" check --shop "$work/demo"
line 'the same with the quick start' "$quick" check --shop "$work/demo"
line '`card` of one job' java -jar "$jar" card Q-3101 --shop "$work/demo" --out "$work/card.pdf"
line 'the same with the quick start' "$quick" card Q-3101 --shop "$work/demo" --out "$work/card.pdf"
line '`dates` of one job' java -jar "$jar" dates Q-3101 --shop "$work/demo"
line 'the same with the quick start' "$quick" dates Q-3101 --shop "$work/demo"
for jobs in $sizes; do
  shop "$jobs" "$work/shop"
  line "$jobs jobs, first press" java -jar "$jar" press --shop "$work/shop" --out "$work/out"
  line "$jobs jobs, \`cp -r\` of what it made" cp -r "$work/out" "$work/copy"
  line "$jobs jobs, press with nothing new" "$quick" press --shop "$work/shop" --out "$work/out"
  sed 's/^id: .*/id: NEW-1/' "$demo/jobs/Q-3101.yaml" >"$work/shop/jobs/NEW-1.yaml"
  line "$jobs jobs, press with one new, quick start" "$quick" press --shop "$work/shop" --out "$work/out"
  rm -rf "$work/shop" "$work/out" "$work/copy"
done
