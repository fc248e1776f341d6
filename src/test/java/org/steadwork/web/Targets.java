package org.steadwork.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steadwork.account.Role;

/** Where inputs can be sent: the forms found by walking the pages of a full case, every route, and the operations of the API's document. */
final class Targets {

    /** A form with the visitor who sees it. */
    record Owned(Visitor visitor, ShownForm form) {
    }

    private static final Pattern PARAMETER = Pattern.compile("\\{([A-Za-z]+)}");
    private static final int MOST_PAGES = 160;
    private static final Set<String> LEFT = Set.of("/sign-out", "/clinic/backup", "/own");

    final Visitor lead;
    private final Map<Visitor, Role> signedIn;
    final List<Visitor> visitors;
    final List<Owned> forms = new ArrayList<>();
    final List<Route> routes = Route.all();
    final SchemaInputs inputs;
    final List<SchemaInputs.Operation> operations;
    private final FullCase.Made made;

    Targets(FullCase.Made made, TestAccounts accounts, Random random) {
        this.made = made;
        this.signedIn = new LinkedHashMap<>();
        List.of(Role.LEAD, Role.CLINICIAN, Role.ASSISTANT).forEach(role -> signedIn.put(new Visitor(), role));
        signInAgain(accounts);
        List<Visitor> staff = List.copyOf(signedIn.keySet());
        this.lead = staff.get(0);
        Visitor patient = new Visitor();
        patient.open("/own/" + made.parts().get("token"));
        patient.submit("/own/" + made.parts().get("token"), Map.of("born", "3 May 1988"));
        this.visitors = List.of(lead, staff.get(1), staff.get(2), patient, new Visitor());
        routes.removeIf(route -> route.path().startsWith("/api/") || route.path().equals("/sign-out") || route.path().equals("/own") || route.path().equals("/first-run"));
        walk(lead, "/", "/patients/new", "/patients/" + made.patient(), "/clinic", "/bench", "/employers", "/clinic/retention/" + made.patient(), made.path());
        walk(patient, "/own/today", "/own/report");
        lead.open("/q/openapi?format=json");
        this.inputs = new SchemaInputs(lead.answer().asString(), random);
        this.operations = inputs.operations();
        if (forms.size() < 40 || operations.isEmpty()) {
            throw new AssertionError("only " + forms.size() + " forms and " + operations.size() + " operations were found");
        }
    }

    /** Among what is sent is the end of sessions and the end of accounts; without this the rest would meet nothing but the sign-in. */
    void signInAgain(TestAccounts accounts) {
        signedIn.forEach(accounts::back);
    }

    boolean staff(Visitor visitor) {
        return signedIn.containsKey(visitor);
    }

    private void walk(Visitor visitor, String... from) {
        Deque<String> open = new ArrayDeque<>(List.of(from));
        Set<String> seen = new LinkedHashSet<>();
        Map<String, ShownForm> found = new LinkedHashMap<>();
        while (!open.isEmpty() && seen.size() < MOST_PAGES) {
            String path = open.poll();
            if (!seen.add(path)) {
                continue;
            }
            visitor.open(path);
            ShownForm.of(path, visitor.page()).stream().filter(form -> !LEFT.contains(form.action()) && !form.action().endsWith("/remove"))
                    .forEach(form -> found.putIfAbsent(form.shape(), form));
            visitor.page().select("main a[href^=/]").eachAttr("href").stream().map(href -> href.replaceFirst("[?#].*", "")).filter(this::ours).forEach(open::add);
        }
        found.values().forEach(form -> forms.add(new Owned(visitor, form)));
    }

    /** Pages of this case and this person, and those of nobody; not those of the other people in the database. */
    private boolean ours(String href) {
        return !href.matches(".*\\.(svg|png|pdf|ics|zip|backup|jpg)") && !href.matches(".*/programme/(add|sets)/.*")
                && (href.startsWith(made.path() + "/") || href.startsWith("/patients/" + made.patient()) || href.matches("/(bench|employers|sites|furniture|clinic|own)\\b.*")
                && !href.matches("/clinic/retention/\\d+"));
    }

    /** Returns the address of a route; {@code instead} gives what stands for a part, or null for what is right. */
    String path(Route route, UnaryOperator<String> instead) {
        Map<String, String> values = new LinkedHashMap<>(made.parts());
        values.put("calculator", "screen-breaks");
        values.put("id", route.path().startsWith("/patients") ? made.patient() : made.caseId());
        return PARAMETER.matcher(route.path()).replaceAll(part -> {
            String other = instead.apply(part.group(1));
            return Matcher.quoteReplacement(other != null ? other : values.getOrDefault(part.group(1), "1"));
        });
    }

    String token(Visitor visitor) {
        return visitor.open("/sign-in").select("input[name=csrf-token]").val();
    }
}
