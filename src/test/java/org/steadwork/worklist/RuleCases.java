package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;

/** Writes straight into the tables what the features would store on a day, so that each rule is met by exactly the figures named. */
@ApplicationScoped
class RuleCases {

    @Inject
    EntityManager db;

    @Inject
    TestCases cases;

    @Inject
    TestAccounts accounts;

    long open(String family) {
        return cases.open("Rule", family);
    }

    @Transactional
    long row(String table, Map<String, Object> values) {
        long id = ((Number) db.createNativeQuery("select nextval('" + table + "_seq')").getSingleResult()).longValue();
        Map<String, Object> all = new LinkedHashMap<>(Map.of("id", id));
        all.putAll(values);
        Query insert = db.createNativeQuery("insert into " + table + " (" + String.join(", ", all.keySet()) + ") values ("
                + all.keySet().stream().map(column -> ":" + column).collect(Collectors.joining(", ")) + ")");
        all.forEach(insert::setParameter);
        insert.executeUpdate();
        return id;
    }

    @Transactional
    void sql(String statement) {
        db.createNativeQuery(statement).executeUpdate();
    }

    void sql(String statement, Object... numbers) {
        sql(statement.formatted(numbers));
    }

    private long me() {
        return accounts.of(Role.CLINICIAN).id();
    }

    private static Object at(LocalDate day) {
        return day.atTime(LocalTime.NOON).atZone(ZoneId.systemDefault()).toOffsetDateTime();
    }

    long tried(long caseId, int visit, LocalDate day, String route, String outcome) {
        long of = ((Number) db.createNativeQuery("select id from visit where case_file_id = ?1 and number = ?2").setParameter(1, caseId).setParameter(2, visit).getSingleResult()).longValue();
        return row("contact_attempt", Map.of("visit_id", of, "tried_at", at(day), "route", route, "outcome", outcome, "made_by", "Test"));
    }

    long screen(long caseId, LocalDate day, String verdict, String open, boolean signed) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "occasion", "FULL", "screened_on", day, "regions", "neck", "left_open", "",
                "begun_by_id", me(), "begun_at", at(day), "saved_at", at(day), "verdict", verdict));
        values.put("open_answers", open);
        values.put("suspended_until_asked", "");
        if (signed) {
            values.put("signed_by_id", me());
            values.put("signed_at", at(day));
        }
        return row("red_flag_screen", values);
    }

    long flag(long caseId, long screen, String urgency, LocalDate day) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "screen_id", screen, "origin", "test", "name", "night pain", "points_to", "a cause",
                "action", "call", "suspends", "", "certain", true, "found_urgency", urgency));
        values.put("urgency", urgency);
        values.put("raised_at", at(day));
        values.put("urgency_since", at(day));
        return row("red_flag", values);
    }

    void call(long caseId, LocalDate day) {
        row("red_flag_call", Map.of("version", 0, "case_file_id", caseId, "called", "Dr Test", "called_at", day.atTime(13, 0), "said", "seen today", "recorded_by_id", me(),
                "recorded_at", day.atTime(13, 0).atZone(ZoneId.systemDefault()).toOffsetDateTime()));
    }

    void status(long caseId, String code, LocalDate from, LocalDate until) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "code", code, "from_on", from, "decided_by", "DOCTOR", "recorded_by", "Test",
                "recorded_at", at(from)));
        if (until != null) {
            values.put("until_on", until);
        }
        row("work_status", values);
    }

    long plan(long caseId, LocalDate starts) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "number", 1, "starts_on", starts, "normal_week_minutes", 2250, "start_percent", 50,
                "weeks", 3, "step_minutes", 30, "working_days", "MONDAY TUESDAY WEDNESDAY THURSDAY FRIDAY", "step_rule", "up"));
        values.put("agreed_with", "worker");
        values.put("agreed_on", starts);
        values.put("recorded_by", "Test");
        values.put("recorded_at", at(starts));
        return row("work_plan", values);
    }

    long finding(long caseId, LocalDate found, LocalDate agreed) {
        long assessment = row("workplace_assessment", Map.of("version", 0, "case_file_id", caseId, "assessed_on", found, "lenses", "SINGLE_OR_NONE", "laptop_alone", false));
        return row("workplace_finding", Map.of("version", 0, "case_file_id", caseId, "assessment_id", assessment, "criterion_id", "CH-1", "verdict", "OUT_OF_RANGE", "found_on", found,
                "agreed_on", agreed, "agreed_with", "the manager"));
    }

    long prescription(long caseId, LocalDate from) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "exercise_key", "sh_rolls", "side", "BOTH", "repetitions", "10", "sides", 1,
                "days_a_week", "7", "effort", "light", "pain_ceiling", 3));
        values.put("started_on", from);
        values.put("given_by", "Test");
        values.put("given_at", at(from));
        return row("exercise_prescription", values);
    }

    void adherence(long prescription, LocalDate weekTo, Integer done, int planned) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "prescription_id", prescription, "week_to", weekTo, "planned", planned, "next_morning", "NOT_ASKED",
                "reported_by", "Test"));
        if (done != null) {
            values.put("done", done);
        }
        row("exercise_adherence", values);
    }

    void tick(long prescription, LocalDate day, boolean alarm) {
        row("session_tick", Map.of("version", 0, "prescription_id", prescription, "done_on", day, "slot", 0, "pain_before", 2, "pain_after", 6, "taken_back", false, "alarm", alarm,
                "received_at", at(day)));
    }

    long report(long caseId, LocalDate day, String warnings, boolean atOnce, boolean painUp) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "reported_on", day, "at_once", atOnce, "pain_up", painUp, "received_at", at(day)));
        if (warnings != null) {
            values.put("warnings", warnings);
        }
        return row("own_report", values);
    }

    long lockedLink(long caseId, LocalDate day) {
        return row("own_link", Map.of("version", 0, "case_file_id", caseId, "token_hash", "test-" + caseId, "made_by", "Test", "made_at", at(day), "expires_on", day.plusDays(90),
                "failed_tries", 5, "locked_at", at(day)));
    }

    private long doctor() {
        return row("correspondent", Map.of("version", 0, "kind", "DOCTOR", "name", "Dr Rule", "search_name", "dr rule"));
    }

    long letter(long caseId, String kind, LocalDate drafted) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("version", 0, "case_file_id", caseId, "patient_id", patient(caseId), "number", 1, "kind", kind, "recipient_kind", "DOCTOR",
                "correspondent_id", doctor(), "texts", "{}", "drafted_by_id", me(), "drafted_at", at(drafted)));
        values.put("saved_by_id", me());
        values.put("saved_at", at(drafted));
        return row("letter", values);
    }

    long letterEvent(long letter, String kind, LocalDate day, LocalDate replyBy) {
        Map<String, Object> values = new LinkedHashMap<>(Map.of("letter_id", letter, "letter_version", 0, "kind", kind, "happened_on", day, "how", "by post", "recorded_by_id", me(),
                "recorded_at", at(day)));
        if (replyBy != null) {
            values.put("reply_by", replyBy);
        }
        return row("letter_event", values);
    }

    long consent(long caseId, long doctor, LocalDate given, LocalDate until) {
        return row("disclosure_consent", Map.of("version", 0, "case_file_id", caseId, "recipient_kind", "DOCTOR", "correspondent_id", doctor, "recipient_name", "Dr Rule", "given_how", "SPOKEN",
                "given_on", given, "holds_until", until, "shown_text", "shown", "recorded_by_id", me()));
    }

    long newDoctor() {
        return doctor();
    }

    void symptoms(long caseId, LocalDate day, String zone) {
        long report = row("symptom_report", Map.of("version", 0, "case_file_id", caseId, "reported_on", day, "symptom_free", false, "course", "NOT_ASKED", "night_waking", "NOT_ASKED",
                "cough_or_sneeze", "NOT_ASKED", "saved_by", "Test", "saved_at", at(day)));
        row("region_symptom", Map.of("symptom_report_id", report, "zone", zone, "kinds", ""));
    }

    void signed(long caseId, int visit, LocalDate day) {
        row("visit_note", Map.of("version", 0, "visit_id", visit(caseId, visit), "drafted_by", "Test", "drafted_at", at(day), "signed_by_id", me(), "signed_by", "Test", "signed_at", at(day)));
    }

    private long visit(long caseId, int number) {
        return ((Number) db.createNativeQuery("select id from visit where case_file_id = " + caseId + " and number = " + number).getSingleResult()).longValue();
    }

    private long patient(long caseId) {
        return ((Number) db.createNativeQuery("select patient_id from case_file where id = " + caseId).getSingleResult()).longValue();
    }

    void addVisit(long caseId, int number, LocalDate day, String attendance) {
        row("visit", Map.of("version", 0, "case_file_id", caseId, "number", number, "visited_on", day, "kind", "FOLLOW_UP", "attendance", attendance));
    }
}
