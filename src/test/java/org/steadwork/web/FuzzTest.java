package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.agroal.api.AgroalDataSource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Seeded random inputs to every route, every field of every form and every operation of the API: whatever is sent, the answer is no failure of ours
 * and shows nothing of the inside, and what is refused leaves nothing stored. {@code ./mvnw -Pfuzz test} sends 100,000.
 */
@QuarkusTest
@Tag("long")
class FuzzTest {

    private static final int INPUTS = Integer.getInteger("steadwork.fuzz", 1200);
    private static final long SEED = Long.getLong("steadwork.fuzz.seed", 20301130L);
    /** A case that was written to so often is left for a new one: pages of thousands of visits only make the run slow. */
    private static final int INPUTS_A_CASE = 2500;
    private static final int COUNTED_EVERY = 25;
    /** The token is wrong, or what was sent is too large or of no known kind to be looked at for one. */
    private static final Set<Integer> UNREAD = Set.of(400, 413, 415);
    private static final List<String> TYPES = List.of("application/x-www-form-urlencoded", "application/x-www-form-urlencoded; charset=utf-16", "multipart/form-data",
            "multipart/form-data; boundary=x", "text/plain", "application/json", "application/xml", "text/html", "image/png");

    @Inject
    TestAccounts accounts;

    @Inject
    FullCase cases;

    @Inject
    AgroalDataSource source;

    private final Random random = new Random(SEED);
    private final Map<String, Set<String>> wrong = new TreeMap<>();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private final Map<String, Integer> reached = new TreeMap<>();

    @Test
    void everyRouteAndFieldAnswersAnything() throws Exception {
        Map<String, Long> whole = new Halves(source).withoutHistory();
        int sent = 0;
        for (int round = 0; sent < INPUTS; round++) {
            Targets targets = new Targets(cases.make(name(), name()), accounts, random);
            int many = Math.min(INPUTS_A_CASE, INPUTS - sent);
            for (int i = 0; i < many; i++, sent++) {
                one(targets, sent);
            }
            progress(sent);
        }
        assertEquals(whole, new Halves(source).withoutHistory(), "stored by half");
        System.out.println("Fuzz: " + sent + " inputs, answers " + statuses + ", " + reached.size() + " targets reached, " + turnedAway + " met the sign-in alone");
        assertTrue(statuses.getOrDefault(200, 0) > INPUTS / 50 && statuses.getOrDefault(422, 0) > INPUTS / 50, () -> "hardly anything was reached: " + statuses);
        assertTrue(unsendable < INPUTS / 20, () -> unsendable + " could not be sent");
        assertTrue(turnedAway < INPUTS / 20, () -> turnedAway + " met the sign-in alone");
        assertTrue(wrong.isEmpty(), () -> statuses + "\n" + report());
    }

    /** Unlike every other, since all have one day of birth and would be pointed out as doubles. */
    private String name() {
        return "F" + random.ints(12, 'a', 'z' + 1).mapToObj(Character::toString).collect(Collectors.joining());
    }

    private void one(Targets targets, int number) throws Exception {
        Visitor visitor = targets.visitors.get(random.nextInt(targets.visitors.size()));
        boolean counted = number % COUNTED_EVERY == 0;
        Map<String, Long> before = counted ? new Halves(source).counts() : Map.of();
        int kind = random.nextInt(10);
        String where;
        try {
            where = kind < 6 ? form(targets) : kind < 8 ? route(visitor, targets) : api(targets);
        } catch (IllegalArgumentException e) {
            unsendable++; // the client of this test does not know how to send it
            return;
        }
        if (targets.staff(last) && (last.askedToSignIn() || last.status() == 401)) {
            turnedAway++;
            targets.signInAgain(accounts);
        }
        if (counted && last.status() >= 400 && !before.equals(new Halves(source).counts())) {
            note(where, last.status() + " and yet something was stored");
        }
    }

    private int unsendable;
    private int turnedAway;
    private Visitor last;
    private String what;

    private String form(Targets targets) {
        Targets.Owned owned = targets.forms.get(random.nextInt(targets.forms.size()));
        last = owned.visitor();
        ShownForm form = random.nextInt(3) == 0 ? anew(owned) : owned.form();
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        StringBuilder done = new StringBuilder();
        List<String> fields = new ArrayList<>(form.values().keySet());
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes && !fields.isEmpty(); i++) {
            change(values, fields.get(random.nextInt(fields.size())), done);
        }
        boolean wrongToken = form.values().containsKey("csrf-token") && random.nextInt(20) == 0;
        if (wrongToken) {
            spoil(values, targets, done);
        }
        what = done.toString();
        int way = random.nextInt(40);
        if (way == 0) {
            last.body(form.action(), TYPES.get(random.nextInt(TYPES.size())), encoded(values));
        } else if (way == 1) {
            last.body(form.action(), "application/x-www-form-urlencoded", encoded(values) + "&%zz=%&=&&a=%ff%fe");
        } else {
            last.post(form.action(), values);
            if (wrongToken && !UNREAD.contains(last.status()) && !last.askedToSignIn()) {
                note(form.shape(), "took a wrong token with " + last.status());
            }
        }
        judge(form.shape());
        return form.shape();
    }

    /** No token, one that was made up, or one that belongs to somebody else. */
    private void spoil(Map<String, List<String>> values, Targets targets, StringBuilder done) {
        switch (random.nextInt(3)) {
            case 0 -> values.remove("csrf-token");
            case 1 -> values.put("csrf-token", List.of(HostileValues.any(random) + "x"));
            default -> values.put("csrf-token", List.of(targets.token(new Visitor())));
        }
        done.append("a wrong token; ");
    }

    private ShownForm anew(Targets.Owned owned) {
        owned.visitor().open(owned.form().page());
        return ShownForm.of(owned.form().page(), owned.visitor().page()).stream().filter(now -> now.shape().equals(owned.form().shape())).findFirst().orElse(owned.form());
    }

    private void change(Map<String, List<String>> values, String field, StringBuilder done) {
        String value = random.nextInt(400) == 0 ? HostileValues.huge() : HostileValues.any(random);
        done.append(field).append('=').append(value, 0, Math.min(60, value.length())).append("; ");
        if (field.equals("csrf-token")) {
            return;
        }
        switch (random.nextInt(12)) {
            case 0 -> values.remove(field);
            case 1 -> values.put(field, List.of(value, HostileValues.any(random), ""));
            case 2 -> values.put(value.isEmpty() ? "x" : value.substring(0, Math.min(200, value.length())), List.of(value));
            case 3 -> values.put(field + "[0]", List.of(value));
            default -> values.put(field, List.of(value));
        }
    }

    private static String encoded(Map<String, List<String>> values) {
        return values.entrySet().stream().flatMap(one -> one.getValue().stream().map(value -> encode(one.getKey()) + "=" + encode(value))).collect(Collectors.joining("&"));
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** An address of a route, its parts mostly right, with a query nobody asked for. */
    private String route(Visitor visitor, Targets targets) {
        Route route = targets.routes.get(random.nextInt(targets.routes.size()));
        String path = targets.path(route, name -> {
            String value = HostileValues.any(random);
            return random.nextInt(4) == 0 ? encode(value.substring(0, Math.min(300, value.length()))) : null;
        });
        List<String> names = List.of("q", "to", "on", "key", "from", "draft", "region", "dose", "side", "hold", "again", "page", "sort", "version", HostileValues.any(random));
        StringBuilder address = new StringBuilder(path);
        for (int i = random.nextInt(3); i > 0; i--) {
            String value = HostileValues.any(random);
            String name = names.get(random.nextInt(names.size()));
            address.append(address.indexOf("?") < 0 ? '?' : '&').append(encode(name.substring(0, Math.min(100, name.length())))).append('=')
                    .append(random.nextInt(30) == 0 ? "%ff%fe" : encode(value.substring(0, Math.min(800, value.length()))));
        }
        last = visitor;
        what = address.substring(0, Math.min(200, address.length()));
        if (route.get() && random.nextInt(10) > 0) {
            visitor.openEncoded(address.toString());
        } else {
            visitor.postEncoded(address.toString(), "csrf-token=" + encode(targets.token(visitor)));
        }
        judge(route.toString());
        return route.toString();
    }

    private String api(Targets targets) {
        SchemaInputs.Operation operation = targets.operations.get(random.nextInt(targets.operations.size()));
        String body = targets.inputs.body(operation.schema());
        last = targets.lead;
        what = body.substring(0, Math.min(300, body.length()));
        last.body(operation.path(), random.nextInt(20) == 0 ? TYPES.get(random.nextInt(TYPES.size())) : "application/json", body);
        judge("API " + operation.path());
        return operation.path();
    }

    private void judge(String where) {
        int status = last.status();
        statuses.merge(status, 1, Integer::sum);
        reached.merge(where, 1, Integer::sum);
        String type = String.valueOf(last.answer().contentType());
        String body = type.contains("html") || type.contains("json") || type.contains("text") || type.contains("svg") ? last.answer().asString() : "";
        if (status >= 500) {
            note(where, status + " after " + what);
        }
        if (body.contains("<script>hostile") || body.contains("<img src=x") || body.contains("<svg/onload")) {
            if (type.contains("html") || type.contains("svg")) {
                note(where, "markup comes back alive after " + what);
            }
        }
        if (body.contains("org.steadwork.") || body.contains("java.lang.") || body.contains("\tat ") || body.contains("jakarta.") || body.contains("root:x:0")) {
            note(where, status + " shows its inside after " + what);
        }
        if (last.answer().header("Set-Cookie") != null && last.answer().header("Set-Cookie").startsWith("x=y")) {
            note(where, "a header was smuggled in");
        }
    }

    private void note(String where, String how) {
        Set<String> noted = wrong.computeIfAbsent(where, key -> new LinkedHashSet<>());
        if (noted.size() < 3) {
            noted.add(how.replace("\u0000", "NUL"));
        }
    }

    private String report() {
        StringBuilder report = new StringBuilder("Seed " + SEED + "\n");
        wrong.forEach((where, how) -> report.append(where).append("\n    ").append(String.join("\n    ", how)).append('\n'));
        return report.toString();
    }

    private void progress(int sent) throws IOException {
        String log = System.getProperty("steadwork.fuzz.log", "");
        if (!log.isEmpty()) {
            Files.writeString(Path.of(log), sent + " inputs, " + statuses + ", " + turnedAway + " met the sign-in alone\n" + report());
        }
    }
}
