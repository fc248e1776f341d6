package org.steadwork.people;

import java.time.LocalDate;

/** One site of an employer in its list, with how many patients work there. */
public record SiteRow(long id, String name, String address, LocalDate retiredOn, long people) {
}
