// Every calendar, read by ical.js (RFC 5545): each event has what it must have, and keeps its identifier when the rig grows.

import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import ICAL from "ical.js";

/** Complaints about one calendar. */
export function calendar_complaints(text) {
  try {
    return complaints_of(new ICAL.Component(ICAL.parse(text)), text);
  } catch (fault) {
    return [`cannot be read: ${fault.message}`];
  }
}

function complaints_of(calendar, text) {
  const complaints = [];
  for (const needed of ["version", "prodid"])
    if (!calendar.hasProperty(needed)) complaints.push(`the calendar has no ${needed}`);
  const seen = new Set();
  for (const event of calendar.getAllSubcomponents("vevent")) {
    const uid = event.getFirstPropertyValue("uid");
    for (const needed of ["uid", "dtstamp", "dtstart", "summary"])
      if (!event.getFirstPropertyValue(needed)) complaints.push(`event ${uid} has no ${needed}`);
    for (const time of ["dtstamp", "dtstart", "dtend"]) {
      const value = event.getFirstPropertyValue(time);
      if (value === null) continue; // said above where it must be there
      if (!(value instanceof ICAL.Time) || Number.isNaN(value.toJSDate().getTime()))
        complaints.push(`event ${uid}: ${time} is no time: ${value}`);
      else if (time === "dtend" && event.hasProperty("dtstart") && value.compare(event.getFirstPropertyValue("dtstart")) <= 0)
        complaints.push(`event ${uid} ends before it begins`);
    }
    if (seen.has(uid)) complaints.push(`two events are ${uid}`);
    seen.add(uid);
  }
  for (const line of text.split("\r\n"))
    if (Buffer.byteLength(line) > 75) complaints.push(`a line of ${Buffer.byteLength(line)} octets`);
  if (/(^|[^\r])\n/.test(text)) complaints.push("a line that does not end with CRLF");
  return complaints;
}

export function events_of(text) {
  return new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((event) => ({
    uid: event.getFirstPropertyValue("uid"),
    day: event.getFirstPropertyValue("dtstart").toString(),
    summary: event.getFirstPropertyValue("summary"),
    description: event.getFirstPropertyValue("description"),
  }));
}

export default async function calendar({ report, boats, sheerpole, into }) {
  const with_calendar = boats.filter((boat) => boat.files(".ics").length > 0);
  const with_days = with_calendar.filter((boat) => events_of(boat.read("calendar.ics")).length > 0).map((boat) => boat.name);
  report.none(
    "boats with days",
    ["sallow", "nasty"].filter((name) => !with_days.includes(name)).map((name) => `${name} has no event`),
  );
  report.none("calendars without a day", with_calendar.map((boat) => boat.name).filter((name) => !with_days.includes(name)));
  for (const boat of with_calendar) report.none(`calendar of ${boat.name}`, calendar_complaints(boat.read("calendar.ics")));

  // With one more stay, before the others: every event is still there under its identifier, on its day, and others are new.
  const nasty = boats.find((boat) => boat.name === "nasty");
  const grown = path.join(into, "grown.rig");
  const rig = readFileSync(nasty.rig, "utf8");
  const stay = rig.match(/^stay forestay [^]*?^}\n/m)[0];
  const more = stay.replace("stay forestay", "stay inner-forestay").replace("8_220 mm", "7_000 mm");
  writeFileSync(grown, rig.replace(stay, more + stay));
  const again = await sheerpole.build("grown", grown, path.join(into, "grown"), "--only", "calendar");
  const before = events_of(nasty.read("calendar.ics"));
  const after = events_of(again.read("calendar.ics"));
  report.none(
    "identifiers stay when a stay is added",
    before
      .filter((event) => !after.some((one) => one.uid === event.uid && one.day === event.day))
      .map((event) => `${event.uid} of ${event.day} is gone`),
  );
  report.none("the added stay has events", after.length > before.length ? [] : [`${after.length} events`]);

  const text = nasty.read("calendar.ics");
  report.caught("an event that does not end", calendar_complaints(text.replace("END:VEVENT\r\n", "")));
  report.caught("no identifier", calendar_complaints(text.replace(/UID:(.|\r\n )*\r\n/, "")), /no uid/);
  report.caught("no stamp", calendar_complaints(text.replace(/DTSTAMP.*\r\n/, "")), /dtstamp/);
  report.caught("no beginning", calendar_complaints(text.replace(/DTSTART.*\r\n/, "")), /dtstart/);
  report.caught("a day that is none", calendar_complaints(text.replace(/DATE:\d{8}/, "DATE:2026xx01")));
  report.caught("one identifier twice", calendar_complaints(text.replaceAll(/UID:(.|\r\n )*?\r\n(?! )/g, "UID:a\r\n")), /two/);
  report.caught("a bare line feed", calendar_complaints(text.replace("\r\n", "\n")), /CRLF/);
}
