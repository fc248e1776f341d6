package org.steadwork;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.stream.Stream;

/** The few walls between the packages; each was broken once to see that it holds. */
@AnalyzeClasses(packages = "org.steadwork", importOptions = WallsTest.WithoutTests.class)
class WallsTest {

    /** Wherever they were compiled to: the build for PostgreSQL has a folder of its own. */
    static class WithoutTests implements ImportOption {

        @Override
        public boolean includes(Location location) {
            return !location.contains("/test-classes/");
        }
    }

    private static final String[] PURE = {"org.steadwork.kernel..", "org.steadwork.body..", "org.steadwork.account.openid..", "org.steadwork.account.trail..", "org.steadwork.casefile.workplan..", "org.steadwork.casemap.ranking..", "org.steadwork.diary.rules..",
        "org.steadwork.exercise.dayplan..", "org.steadwork.exposure.method..", "org.steadwork.letter.disclosure..", "org.steadwork.meeting.agenda..", "org.steadwork.outcome.scoring..",
        "org.steadwork.redflag.rules..", "org.steadwork.workplace.fit.."};
    private static final String[] JAVA_AND_PURE = Stream.concat(Stream.of("java.."), Stream.of(PURE)).toArray(String[]::new);
    private static final String STATISTICS = "org.steadwork.caseload.statistics..";
    private static final String[] JAVA_PURE_AND_DISTRIBUTIONS = Stream.concat(Stream.of(JAVA_AND_PURE),
            Stream.of(STATISTICS, "org.apache.commons.math3..")).toArray(String[]::new);

    @ArchTest
    static final ArchRule coreIsPlainJava = classes().that().resideInAnyPackage(PURE).should().onlyDependOnClassesThat()
            .resideInAnyPackage(JAVA_AND_PURE).because("the numbers must be testable and readable without any framework");

    @ArchTest
    static final ArchRule statisticsArePlainJavaAndDistributions = classes().that().resideInAPackage(STATISTICS).should().onlyDependOnClassesThat()
            .resideInAnyPackage(JAVA_PURE_AND_DISTRIBUTIONS)
            .because("distributions and root finding come from a library that others have checked; all else must be readable without any");

    @ArchTest
    static final ArchRule nothingDependsOnThePages = noClasses().should().dependOnClassesThat().areAnnotatedWith(Path.class)
            .because("pages are where requests come in, not where knowledge lives");

    @ArchTest
    static final ArchRule entitiesKnowNoWeb = noClasses().that().areAnnotatedWith(Entity.class).should().dependOnClassesThat()
            .resideInAnyPackage("jakarta.ws.rs..", "io.quarkus.qute..", "io.vertx..").because("what is recorded does not depend on how it is shown");

    @ArchTest
    static final ArchRule featuresFormNoCycle = slices().matching("org.steadwork.(*)..").should().beFreeOfCycles()
            .because("a reader opens one package and has seen the feature");

    @ArchTest
    static final ArchRule timeIsInjected = noClasses().that().resideOutsideOfPackage("org.steadwork.web..")
            .should().callMethod(LocalDate.class, "now").orShould().callMethod(LocalDateTime.class, "now").orShould().callMethod(Instant.class, "now")
            .because("the clinic's clock is injected; the demo clinic's stands at a day of its own");
}
