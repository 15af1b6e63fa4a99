// Reads a vCard and prints its properties as JSON: what ical.js makes of them.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

const [, properties] = ICAL.parse(readFileSync(process.argv[2], "utf8"));
console.log(JSON.stringify(properties.map(([name, , , ...values]) => ({ name, value: values }))));
