package org.steadwork.people;

import java.time.LocalDate;

/** One employer in the list: who is spoken with there, how many sites are in use and how many patients work there. */
public record EmployerRow(long id, String name, String contactName, String phone, LocalDate retiredOn, long sites, long people) {
}
