package org.steadwork.meeting.agenda;

/** One thing a reason rests on: what it is, and its value with its day. */
public record Figure(String name, String value) {
}
