package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.casefile.CaseFile;
import org.steadwork.demo.OnH2;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.obstacle.Obstacle;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.obstacle.Obstacles;
import org.steadwork.people.Correspondent;
import org.steadwork.people.Employer;

/**
 * The property the whole of disclosure serves, over every case of the demo clinic: whatever was ticked, nothing that was held back
 * from a reader can be found in the text of the PDF that reader gets.
 */
@QuarkusTest
@Tag("own-clinic")
@TestProfile(OnH2.class)
class DisclosureOverDemoTest {

    private static final long SEED = 20301216;
    private static final int RANDOM_STATES = 1;
    private static final int SHORTEST_TELLING_PART = 12;

    @Inject
    EntityManager db;

    @Inject
    LetterDesk desk;

    @Inject
    LetterContent content;

    @Inject
    LetterPrinter printer;

    @Inject
    LetterDrawings drawings;

    @Inject
    Obstacles obstacles;

    @Inject
    Clock clock;

    private final Random random = new Random(SEED);
    private final Map<String, String> frames = new HashMap<>();
    private int printed;
    private int heldBack;

    @Test
    void nothingHeldBackReachesTheText() {
        List<String> leaks = new ArrayList<>();
        List<Long> files = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.id from CaseFile c order by c.id", Long.class).getResultList());
        assertEquals(12, files.size());
        files.forEach(id -> QuarkusTransaction.requiringNew().timeout(300).run(() -> leaks.addAll(leaks(id))));
        assertTrue(printed > 250, printed + " letters");
        assertTrue(heldBack > 2000, heldBack + " facts held back");
        assertTrue(leaks.isEmpty(), () -> "Seed " + SEED + ": " + leaks.size() + " leaks: " + leaks.stream().limit(10).toList());
    }

    private List<String> leaks(long caseId) {
        Account author = db.createQuery("from Account a order by a.id", Account.class).setMaxResults(1).getSingleResult();
        CaseFile file = db.createQuery("from CaseFile c join fetch c.patient p left join fetch p.employer left join fetch p.doctor where c.id = ?1",
                CaseFile.class).setParameter(1, caseId).getSingleResult();
        List<LetterFact> facts = desk.facts(file);
        List<String> leaks = new ArrayList<>();
        for (LetterKind kind : content.kinds()) {
            // from the worker nothing is held back
            kind.recipients().stream().filter(Recipient::needsConsent).sorted()
                    .forEach(recipient -> states(recipient).forEach(ticked -> leaks.addAll(leaks(file, kind, recipient, ticked, facts, author))));
        }
        return leaks;
    }

    /** The search can find: what a doctor's letter holds and the employer's does not is found in the doctor's. */
    @Test
    @Transactional
    public void theSearchFindsWhatIsThere() {
        CaseFile file = db.createQuery("from CaseFile c join fetch c.patient order by c.id", CaseFile.class).setMaxResults(1).getSingleResult();
        Account author = db.createQuery("from Account a order by a.id", Account.class).setMaxResults(1).getSingleResult();
        List<LetterFact> facts = desk.facts(file);
        String text = text(file, content.kind("routine_referral"), Recipient.DOCTOR, Set.of(), facts, author);
        List<LetterFact> hidden = facts.stream().filter(fact -> fact.category() == InformationCategory.PAIN_SCORES).toList();
        assertTrue(hidden.stream().anyMatch(fact -> telling(fact, Set.of()).stream().anyMatch(text::contains)), text);
    }

    /** The hours are those the note of this demo case gives: 20, 25, 30, 35 h, then full hours. The rule for a step speaks of pain and stays here. */
    @Test
    @Transactional
    public void aReturnPlanTellsTheWeeksAndNotWhy() {
        CaseFile file = db.createQuery("from CaseFile c join fetch c.patient p where p.familyName = 'Bellweather'", CaseFile.class).getSingleResult();
        Account author = db.createQuery("from Account a order by a.id", Account.class).setMaxResults(1).getSingleResult();
        List<LetterFact> facts = desk.facts(file);
        for (Recipient recipient : List.of(Recipient.EMPLOYER, Recipient.DOCTOR, Recipient.INSURER)) {
            String text = text(file, content.kind("graded_return"), recipient, Set.of(), facts, author);
            for (String words : List.of("1 6 january 2031 12 january 2031 20 h", "2 13 january 2031 19 january 2031 25 h", "30 h", "35 h",
                    "5 3 february 2031 onwards 40 h, usual", "no forklift until", "on 16 december 2030 with the worker", "not a medical certificate")) {
                assertTrue(text.contains(words), recipient + ": '" + words + "' not in " + text);
            }
            for (String words : List.of("pain", "cord", "walk", "of 10")) {
                assertFalse(text.contains(words), recipient + ": '" + words + "' in " + text);
            }
        }
    }

    /** The desk is drawn where its caption was written, and shows settings of things only. */
    @Test
    @Transactional
    public void theDeskIsDrawnForTheEmployerOnlyWhenAskedAndWithoutTheBody() {
        SectionKind section = content.kind("employer_report").section("desk").orElseThrow();
        assertEquals(InformationCategory.WORKSTATION_FINDINGS, section.information());
        int drawn = 0;
        for (CaseFile file : db.createQuery("from CaseFile c join fetch c.patient order by c.id", CaseFile.class).getResultList()) {
            assertEquals("", desk.composer().draft(content.kind("employer_report"), Recipient.EMPLOYER, Set.of(), desk.facts(file),
                    desk.values(file, Optional.empty())).texts().get("desk"), "left out unless the clinician writes its caption");
            PrintedLetter.Drawing drawing = drawings.of(section, "The desk as it should stand.", file).get(0);
            assertEquals(List.of("The desk as it should stand."), drawing.words());
            if (drawing.svg() != null) {
                drawn++;
                String words = Jsoup.parse(drawing.svg().toString()).select("desc, text").text().toLowerCase(Locale.ROOT);
                assertTrue(words.contains("seat ") && words.contains(" mm"), words);
                for (String body : List.of("stature", "elbow", "knee", "thigh", "popliteal", "found", "pain")) {
                    assertFalse(words.contains(body), body + " in " + words);
                }
            }
        }
        assertTrue(drawn > 0, "no demo case has a desk to draw");
    }

    /** Psychosocial obstacles change the plan and are never told to an employer, whatever was ticked: neither the clinic's words nor the content's. */
    @Test
    @Transactional
    public void noEmployerLetterHoldsAnObstacle() {
        Account author = db.createQuery("from Account a order by a.id", Account.class).setMaxResults(1).getSingleResult();
        List<ObstacleAnswer> noted = db.createQuery("from ObstacleAnswer a join fetch a.caseFile c join fetch c.patient order by a.id", ObstacleAnswer.class)
                .getResultList().stream().filter(ObstacleAnswer::present).toList();
        assertTrue(noted.size() > 3, noted.size() + " obstacles in the demo");
        for (CaseFile file : noted.stream().map(ObstacleAnswer::caseFile).distinct().toList()) {
            List<LetterFact> facts = desk.facts(file);
            for (LetterKind kind : content.kinds()) {
                if (kind.recipients().contains(Recipient.EMPLOYER)) {
                    String text = text(file, kind, Recipient.EMPLOYER, EnumSet.allOf(InformationCategory.class), facts, author);
                    noted.stream().filter(answer -> answer.caseFile().equals(file)).flatMap(answer -> told(answer).stream())
                            .forEach(words -> assertFalse(text.contains(words), file.patient().name() + ", " + kind.key() + ": '" + words + "' in " + text));
                }
            }
        }
    }

    private Set<String> told(ObstacleAnswer answer) {
        Obstacle obstacle = obstacles.find(answer.obstacle()).orElseThrow();
        return Stream.of(obstacle.name(), obstacle.listen(), obstacle.plan(), answer.words()).filter(words -> words != null && !words.isBlank())
                .map(DisclosureOverDemoTest::plain).collect(Collectors.toSet());
    }

    private List<Set<InformationCategory>> states(Recipient recipient) {
        List<InformationCategory> ticks = Arrays.stream(InformationCategory.values())
                .filter(category -> content.matrix().cell(category, recipient).rule() != Rule.ALLOWED).toList();
        Set<Set<InformationCategory>> states = new LinkedHashSet<>(List.of(Set.of()));
        // what may never go is ticked as well: it must change nothing
        states.add(ticks.isEmpty() ? Set.of() : EnumSet.copyOf(ticks));
        for (int i = 0; i < RANDOM_STATES && ticks.size() > 1; i++) {
            states.add(ticks.stream().filter(category -> random.nextBoolean()).collect(Collectors.toSet()));
        }
        return List.copyOf(states);
    }

    private List<String> leaks(CaseFile file, LetterKind kind, Recipient recipient, Set<InformationCategory> ticked, List<LetterFact> facts, Account author) {
        String text = text(file, kind, recipient, ticked, facts, author);
        printed++;
        // letterhead, title and signature tell the same to everybody
        Set<String> open = new LinkedHashSet<>(Set.of(frames.computeIfAbsent(file.id() + kind.key(), key -> frame(file, kind, recipient, author))));
        List<LetterFact> hidden = new ArrayList<>();
        for (LetterFact fact : facts) {
            boolean allowed = content.matrix().decide(fact.category(), new org.steadwork.letter.disclosure.Reader(recipient,
                    org.steadwork.letter.disclosure.Gate.IN_FORCE, ticked)).allowed();
            if (allowed) {
                open.add(plain(fact.text()));
            } else {
                hidden.add(fact);
            }
        }
        heldBack += hidden.size();
        return hidden.stream().flatMap(fact -> telling(fact, open).stream()).distinct().filter(text::contains)
                .map(part -> file.patient().name() + ", " + kind.key() + " to " + recipient + " with " + ticked + ": '" + part + "'").toList();
    }

    /** Returns the parts of a fact long enough to tell something, without those that an allowed fact says as well. */
    private static Set<String> telling(LetterFact fact, Set<String> open) {
        return Arrays.stream(fact.text().split("[.;:,\\n\\t]")).map(DisclosureOverDemoTest::plain)
                .filter(part -> part.length() >= SHORTEST_TELLING_PART).filter(part -> open.stream().noneMatch(words -> words.contains(part)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private String text(CaseFile file, LetterKind kind, Recipient recipient, Set<InformationCategory> ticked, List<LetterFact> facts, Account author) {
        Composer composer = desk.composer();
        Map<String, String> texts = composer.draft(kind, recipient, ticked, facts, desk.values(file, Optional.empty())).texts();
        Letter letter = new Letter(file, 1, kind.key(), reader(file, recipient), texts, author, Instant.now(clock));
        return plain(PrintedPages.text(printer.draft(letter, kind, composer.sections(kind, recipient, ticked), author).bytes()));
    }

    private String frame(CaseFile file, LetterKind kind, Recipient recipient, Account author) {
        return plain(PrintedPages.text(printer.draft(new Letter(file, 1, kind.key(), reader(file, recipient), Map.of(), author, Instant.now(clock)), kind,
                List.of(), author).bytes()));
    }

    private static LetterReader reader(CaseFile file, Recipient recipient) {
        return switch (recipient) {
            case WORKER -> LetterReader.of(file.patient());
            case CASE_REVIEW -> LetterReader.caseMeeting();
            case EMPLOYER -> LetterReader.of(new Employer("Quayside Works"));
            case INSURER -> LetterReader.of(new Correspondent(Correspondent.Kind.INSURER, "Claims desk"));
            case SPECIALIST -> LetterReader.of(new Correspondent(Correspondent.Kind.SPECIALIST, "Ward 4"));
            default -> LetterReader.of(new Correspondent(Correspondent.Kind.DOCTOR, "Dr Q. Quill"));
        };
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('’', '\'').replaceAll("\\s+", " ").replaceAll("^- ", "").strip().toLowerCase(Locale.ROOT);
    }
}
