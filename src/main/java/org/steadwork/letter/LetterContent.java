package org.steadwork.letter;

import io.quarkus.qute.Engine;
import io.quarkus.qute.Template;
import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.workplace.WorkplaceContent;

/** The content letters are made from, read and checked once at the start. */
@ApplicationScoped
@Startup
class LetterContent {

    @Inject
    Engine engine;

    @Inject
    WorkplaceContent criteria;

    @Inject
    ClinicWording wording;

    /** The local habit that holds here; see {@code letters/profiles.yaml}. */
    @ConfigProperty(name = "steadwork.letters.profile", defaultValue = "general")
    String profile;

    private Matrix matrix;
    private LetterKinds kinds;
    private WatchWords watchWords;
    private RedFlagWords redFlagWords;

    @PostConstruct
    void read() {
        Matrix general = DisclosureContent.read();
        matrix = DisclosureProfile.over(general, profile);
        // a kind is checked against the general table: where a profile closes more, its section just stays out
        kinds = LetterKinds.read(general, wording::reworded);
        List<String> strays = wording.strays(kinds.all().stream().map(LetterKind::key).collect(Collectors.toSet()));
        if (!strays.isEmpty()) {
            throw new IllegalStateException("The clinic's folder letters/kinds holds " + strays + "; a file there is named as a kind of letter: "
                    + kinds.all().stream().map(LetterKind::key).toList());
        }
        watchWords = WatchWords.read().sparing(criteria.criteria().stream().flatMap(one -> Stream.of(one.label(), one.adjustment())).toList());
        redFlagWords = RedFlagWords.read();
        for (LetterKind kind : kinds.all()) {
            template(kind);
            kind.suspendedBy().stream().filter(token -> !redFlagWords.knowsStop(token)).forEach(token -> {
                throw new IllegalStateException("letters/kinds/" + kind.key() + ".yaml: no red flag suspends '" + token + "'");
            });
        }
    }

    Matrix matrix() {
        return matrix;
    }

    WatchWords watchWords() {
        return watchWords;
    }

    RedFlagWords redFlagWords() {
        return redFlagWords;
    }

    Collection<LetterKind> kinds() {
        return kinds.all();
    }

    /** Returns a kind of letter, or answers that there is no such page. */
    LetterKind kind(String key) {
        return kinds.find(key).orElseThrow(NotFoundException::new);
    }

    /** Returns the title of a kind; the key itself when the content no longer has the kind, as an old letter may outlive it. */
    String title(String key) {
        return kinds.find(key).map(LetterKind::title).orElse(key.replace('_', ' '));
    }

    /** True for a kind that is not held up for anything. */
    boolean atOnce(String key) {
        return kinds.find(key).filter(kind -> kind.seenFirst() == LetterKind.SeenFirst.COPY_AT_ONCE).isPresent();
    }

    Template template(LetterKind kind) {
        Template template = engine.getTemplate("letter/" + kind.key());
        if (template == null) {
            throw new IllegalStateException("The letter kind " + kind.key() + " has no print template letter/" + kind.key() + ".html");
        }
        return template;
    }
}
