package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.bench.Calculators;
import org.steadwork.bench.Input;
import org.steadwork.casefile.CaseFile;
import org.steadwork.demo.OnH2;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;
import org.steadwork.workplace.Assessments;
import org.steadwork.workplace.WorkplaceAssessment;
import org.steadwork.workplace.WorkplaceContent;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.How;

/** The desks of the demo cases: the page, the API asked with the same numbers, and what letters take up say one and the same. */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(OnH2.class)
class WorkplaceThreeWaysTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** The words of the page for a part of the API's answer, and the letter's word for it; a letter has none for a footrest of 0. */
    private static final Map<String, List<String>> PARTS = Map.of("seat_depth", List.of("Seat depth", "Seat depth"), "seat", List.of("Seat height", "Seat height"),
            "footrest", List.of("Footrest", "Footrest"), "desk", List.of("Desk top", "Desk height"), "armrest", List.of("Armrest above the seat", "Armrests above the seat"),
            "screen_top", List.of("Screen top above the floor", "Top of the screen"), "distance", List.of("Viewing distance", "Distance to the screen"));

    @Inject
    TestAccounts accounts;

    @Inject
    Calculators calculators;

    @Inject
    Assessments assessments;

    @Inject
    WorkplaceContent content;

    @Inject
    WorkplaceFacts facts;

    @Inject
    EntityManager db;

    /** A desk as it was assessed last, with its numbers as the API takes them, and the rows that a letter takes up. */
    private record Assessed(long caseId, String title, String lenses, Map<String, Object> numbers, List<String> letter) {
    }

    @Test
    void pageApiAndLetterSayTheSame() throws Exception {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        int seated = 0;
        int judged = 0;
        for (Assessed desk : QuarkusTransaction.requiringNew().call(this::assessed)) {
            Response response = visitor.json("/api/calculate/fit", JSON.writeValueAsString(desk.numbers));
            if (!desk.numbers.containsKey("popliteal_height")) {
                assertEquals(422, response.statusCode(), desk.title + " has no desk, and the API answers");
                continue;
            }
            assertEquals(200, response.statusCode(), desk.title + ": " + response.asString());
            JsonNode result = JSON.readTree(response.asString()).get("result");
            visitor.open("/cases/" + desk.caseId + "/work-place");
            assertEquals(200, visitor.status());
            seated++;
            judged += deviations(visitor, desk, result.get("deviations_now"));
            settings(visitor, desk, result.get("settings"));
            letter(visitor, desk);
        }
        assertTrue(seated >= 5 && judged >= 4 * seated, seated + " desks, " + judged + " deviations");
    }

    private int deviations(Visitor visitor, Assessed desk, JsonNode api) {
        Map<String, Element> rows = visitor.page().select("li.finding:not(.finding--head)").stream()
                .collect(Collectors.toMap(row -> row.selectFirst(".finding__what").ownText(), row -> row, (first, again) -> first));
        int judged = 0;
        for (Criterion criterion : content.criteria()) {
            boolean worn = criterion.lenses() == null || criterion.lenses().name().equals(desk.lenses);
            if (criterion.kind() != Criterion.Kind.FIT || !worn) {
                continue;
            }
            JsonNode told = api.path(criterion.deviation().name().toLowerCase(Locale.ROOT));
            Element row = rows.get(criterion.label());
            if (told.path("verdict").asText("not_looked_at").equals("not_looked_at")) {
                assertTrue(row == null, desk.title + ": the page judges " + criterion.id() + ", the API does not");
                continue;
            }
            assertTrue(row != null, desk.title + ": the page does not judge " + criterion.id() + ", the API says " + told);
            String where = desk.title + ", " + criterion.id() + ": page " + row.text() + ", API " + told;
            assertEquals(told.get("value").asDouble(), shown(row), 0.51, where);
            String state = row.selectFirst(".status").className().replaceAll(".*--", "");
            String verdict = Map.of("in_range", "in", "near_the_edge", "near", "out_of_range", "out").get(told.get("verdict").asText());
            // a low screen whose middle is seen at a good angle is accepted by the page, which knows the angle; the fit does not
            boolean accepted = criterion.deviation() == Deviation.SCREEN_DROP && state.equals("in") && shown(row) > 0;
            assertTrue(state.equals(verdict) || accepted, where);
            judged++;
        }
        return judged;
    }

    /** What the page proposes is what the API proposes, to 5 mm; what the letter asks for is the same to 1 mm. */
    private void settings(Visitor visitor, Assessed desk, JsonNode api) {
        Map<String, String> proposed = new HashMap<>();
        Map<String, String> now = new HashMap<>();
        for (Element row : visitor.page().select("section:has(#s-steps) tbody tr")) {
            proposed.put(row.select("th").text(), plain(row.select("td[data-label=Proposed]").text()));
            now.put(row.select("th").text(), plain(row.select("td[data-label=Now]").text()));
        }
        Map<String, String> letter = desk.letter.stream().map(WorkplaceThreeWaysTest::plain).filter(row -> PARTS.values().stream().anyMatch(words -> row.startsWith(words.get(1) + "\t")))
                .collect(Collectors.toMap(row -> row.split("\t")[0], row -> row, (first, again) -> first));
        int compared = 0;
        for (var part : api.properties()) {
            if (PARTS.containsKey(part.getKey()) && proposed.containsKey(PARTS.get(part.getKey()).get(0))) {
                double value = part.getValue().get("value").asDouble();
                String page = proposed.get(PARTS.get(part.getKey()).get(0));
                String where = desk.title + ", " + part.getKey() + ": page " + page + ", API " + value;
                if (page.equals("none")) {
                    assertEquals(0, value, where);
                } else if (page.equals("as now")) {
                    assertEquals(mm(now.get(PARTS.get(part.getKey()).get(0))), value, 2.51, where);
                } else {
                    assertEquals(value, mm(page), 2.51, where);
                }
                String row = letter.get(PARTS.get(part.getKey()).get(1));
                if (page.equals("as now")) {
                    assertNull(row, where + ": a letter asks for no change where there is none");
                } else if (value > 0) {
                    assertTrue(row != null && row.contains("\t" + Math.round(value) + " mm"), where + ", letter " + letter);
                }
                compared++;
            }
        }
        assertTrue(compared >= 3, desk.title + ": " + proposed + " " + api);
    }

    /** What the page says is off is what a letter takes up; beyond that only what an earlier look found and the latest did not look at. */
    private void letter(Visitor visitor, Assessed desk) {
        Set<String> off = new TreeSet<>(visitor.page().select("li.finding:not(.finding--head):has(.status--out, .status--near) .finding__what").stream().map(Element::ownText).toList());
        Set<String> in = new TreeSet<>(visitor.page().select("li.finding:not(.finding--head):has(.status--in) .finding__what").stream().map(Element::ownText).toList());
        Set<String> labels = content.criteria().stream().map(Criterion::label).collect(Collectors.toSet());
        Set<String> taken = new TreeSet<>(desk.letter.stream().map(row -> row.split("\t")[0]).filter(labels::contains).toList());
        assertTrue(taken.containsAll(off), desk.title + ": page " + off + ", letter " + taken);
        in.retainAll(taken);
        assertEquals(Set.of(), in, desk.title + ": the letter takes up what the page says is in range");
    }

    List<Assessed> assessed() {
        Set<String> known = calculators.named("fit").orElseThrow().inputs().stream().map(Input::name).collect(Collectors.toSet());
        return db.createQuery("from CaseFile c join fetch c.patient order by c.id", CaseFile.class).getResultList().stream()
                .filter(file -> assessments.latest(file.id()).isPresent()).map(file -> {
                    WorkplaceAssessment latest = assessments.latest(file.id()).orElseThrow();
                    Map<String, Object> numbers = new LinkedHashMap<>();
                    for (Object[] row : db.createQuery("select m.measure, m.amount, m.how from RecordedMeasurement m where m.assessment = ?1", Object[].class)
                            .setParameter(1, latest).getResultList()) {
                        boolean ofLaptop = row[0].toString().startsWith("laptop_");
                        if (known.contains(row[0].toString()) && row[2] != How.ESTIMATED && (latest.laptopAlone() || !ofLaptop)) {
                            numbers.put(row[0].toString(), (BigDecimal) row[1]);
                        }
                    }
                    numbers.put("lenses", latest.lenses().name().toLowerCase(Locale.ROOT));
                    return new Assessed(file.id(), file.complaint(), latest.lenses().name(), numbers,
                            facts.of(file).stream().map(LetterFact::text).toList());
                }).toList();
    }

    private static double shown(Element row) {
        return mm(plain(row.select("dt").stream().filter(term -> term.text().equals("Found")).findFirst().orElseThrow().nextElementSibling().text()));
    }

    private static double mm(String text) {
        var number = Pattern.compile("[-+]?\\d[\\d ]*").matcher(text.replace('\u2212', '-'));
        assertTrue(number.find(), text);
        return Double.parseDouble(number.group().replace(" ", "").replace("+", ""));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }
}
