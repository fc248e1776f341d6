package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steadwork.account.Account;
import org.steadwork.account.Accounts;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** Reads and fills the form a meeting is planned with. */
@ApplicationScoped
class MeetingForm {

    static final int GUESTS = 4;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm");

    /** What the form offers. */
    record Offer(List<Option> clinicians, List<Account> accounts, List<Option> readers) {

        /** Places for guests: those filled and one more, at least two. */
        public List<Integer> guests(Form form) {
            int filled = 0;
            for (int i = 1; i <= GUESTS; i++) {
                if (form.has("guest" + i) || form.error("guest" + i) != null || form.has("guestRole" + i)) {
                    filled = i;
                }
            }
            return Stream.iterate(1, i -> i + 1).limit(Math.min(GUESTS, Math.max(2, filled + 1))).toList();
        }
    }

    @Inject
    Accounts accounts;

    @Inject
    EntityManager db;

    Offer offer() {
        List<Option> readers = new ArrayList<>();
        db.createQuery("from Employer e where e.retiredOn is null order by e.name", Employer.class).getResultList()
                .forEach(employer -> readers.add(new Option("employer-" + employer.id(), employer.name())));
        db.createQuery("from Correspondent c order by c.name, c.id", Correspondent.class).getResultList()
                .forEach(one -> readers.add(new Option("correspondent-" + one.id(), one.name() == null ? one.organisation() : one.name())));
        return new Offer(accounts.clinicians().stream().map(one -> new Option(String.valueOf(one.id()), one.displayName())).toList(),
                accounts.all().stream().filter(Account::active).toList(), readers);
    }

    static Form show(ReviewMeeting meeting) {
        Form form = Form.empty().with("version", meeting.version()).with("heldOn", Dates.shown(meeting.heldOn())).with("startsAt", TIME.format(meeting.startsAt()))
                .with("chair", meeting.chair().id()).with("notes", meeting.notes().id())
                .withAll("who", meeting.people().stream().filter(person -> !person.guest()).map(person -> String.valueOf(person.account().id())).toList());
        int place = 1;
        for (MeetingPerson guest : meeting.guests()) {
            form.with("guest" + place, guest.name()).with("guestRole" + place, guest.role()).with("guestFor" + place, guest.standsFor());
            place++;
        }
        return form;
    }

    /** Reads everything into a meeting; what is wrong is noted at its field and nothing is changed. */
    void read(Form form, ReviewMeeting meeting, LocalDate today) {
        LocalDate day = form.requiredDate("heldOn", "Day");
        if (day != null && day.isBefore(today.minusDays(7))) {
            form.error("heldOn", "A meeting is planned, or entered within a week after it was held. You entered " + Dates.shown(day) + ".");
        }
        LocalTime time = time(form);
        Map<String, Account> known = accounts.all().stream().filter(Account::active).collect(Collectors.toMap(one -> String.valueOf(one.id()), Function.identity()));
        Account chair = account(form, "chair", "Chair", known);
        Account notes = account(form, "notes", "Note-taker", known);
        List<MeetingPerson> people = new ArrayList<>();
        Stream.concat(form.values("who").stream(), Stream.of(form.value("chair"), form.value("notes"))).distinct().map(known::get)
                .filter(one -> one != null).forEach(one -> people.add(MeetingPerson.of(meeting, one)));
        for (int i = 1; i <= GUESTS; i++) {
            guest(form, i, meeting, people);
        }
        if (!form.hasErrors()) {
            meeting.plan(day, time, chair, notes);
            meeting.attend(people);
        }
    }

    private static LocalTime time(Form form) {
        String text = form.requiredText("startsAt", "Time", 5);
        if (text == null) {
            return null;
        }
        try {
            return LocalTime.parse(text.replace('.', ':'), TIME);
        } catch (DateTimeException e) {
            form.error("startsAt", "Time must be an hour of the day, for example 12:30. You entered “" + text + "”.");
            return null;
        }
    }

    private static Account account(Form form, String field, String label, Map<String, Account> known) {
        Account account = known.get(form.value(field));
        if (account == null || !account.role().grants().contains("clinician")) {
            form.error(field, label + " is missing. Choose a clinician.");
        }
        return account;
    }

    private void guest(Form form, int i, ReviewMeeting meeting, List<MeetingPerson> people) {
        String name = form.text("guest" + i, 120);
        String role = form.text("guestRole" + i, 120);
        String key = form.value("guestFor" + i).strip();
        if (name == null && role == null && key.isEmpty()) {
            return;
        }
        if (name == null) {
            form.error("guest" + i, "Name the guest, or leave the whole line empty.");
            return;
        }
        if (role == null) {
            form.error("guestRole" + i, "Say in which role " + name + " comes.");
        }
        Employer employer = key.matches("employer-\\d{1,18}") ? db.find(Employer.class, Long.valueOf(key.substring(9))) : null;
        Correspondent correspondent = key.matches("correspondent-\\d{1,18}") ? db.find(Correspondent.class, Long.valueOf(key.substring(14))) : null;
        if (!key.isEmpty() && employer == null && correspondent == null) {
            form.error("guestFor" + i, "Stands for: choose one of those offered, or nobody on record.");
        }
        MeetingPerson guest = MeetingPerson.guest(meeting, name, role, employer, correspondent);
        if (people.stream().noneMatch(guest::same)) {
            people.add(guest);
        }
    }
}
