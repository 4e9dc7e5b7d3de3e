/** Calendars for other programs: entries go in, the text of RFC 5545 comes out. Names no page and no one who asks. */
package weekwright.files.calendar;
