// Reads an iCalendar file and prints its events as JSON: what ical.js makes of them.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

const calendar = new ICAL.Component(ICAL.parse(readFileSync(process.argv[2], "utf8")));
const events = calendar.getAllSubcomponents("vevent").map((component) => {
  const event = new ICAL.Event(component);
  const alarm = component.getFirstSubcomponent("valarm");
  const days = [];
  if (event.isRecurring()) {
    const each = event.iterator();
    for (let next = each.next(); next && days.length < 1000; next = each.next()) {
      days.push(next.toString());
    }
  }
  return {
    uid: event.uid,
    start: event.startDate.isDate
      ? event.startDate.toString()
      : event.startDate.toJSDate().toISOString().replace(".000Z", "Z"),
    stamp: component.getFirstPropertyValue("dtstamp").toJSDate().toISOString().replace(".000Z", "Z"),
    sequence: event.sequence ?? -1,
    status: component.getFirstPropertyValue("status") ?? "",
    summary: event.summary,
    description: event.description ?? "",
    location: event.location ?? "",
    alarm: alarm ? alarm.getFirstPropertyValue("trigger").toString() : "",
    days,
  };
});
console.log(JSON.stringify(events));
