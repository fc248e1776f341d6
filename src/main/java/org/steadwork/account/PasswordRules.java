package org.steadwork.account;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.account.password.WeakPasswords;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.web.Form;

/** What a new password must hold to: its length, and that it is not one of those tried first. Which signs it is made of is free. */
@ApplicationScoped
class PasswordRules {

    static final int SHORTEST = 12;
    static final int LONGEST = 128;
    private static final String FILE = "accounts/weak-words.yaml";

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> clinicName;

    private WeakPasswords weak;

    /** Lets a wrong entry of the list stop the start. */
    void start(@Observes StartupEvent event) {
        Objects.requireNonNull(weak);
    }

    @PostConstruct
    void read() {
        Entry file = Content.yaml(FILE);
        Set<String> words = new HashSet<>();
        for (String word : file.texts("words")) {
            if (!word.matches("[a-z]{3,20}")) {
                throw file.problem("'" + word + "' must be 3 to 20 small letters");
            }
            words.add(word);
        }
        weak = new WeakPasswords(words);
    }

    /**
     * Reads the new password of a form, typed twice into {@code password} and {@code passwordAgain}; what is wrong is noted at the field.
     *
     * @param own the names of the account, which must not make up the password
     */
    String read(Form form, String... own) {
        String password = form.value("password");
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST || length > LONGEST) {
            form.error("password", "The password must have " + SHORTEST + " to " + LONGEST + " characters. Yours has " + length + ".");
            return password;
        }
        Set<String> names = new LinkedHashSet<>();
        clinicName.ifPresent(names::add);
        for (String name : own) {
            if (name != null) {
                names.add(name);
            }
        }
        String reason = weak.reason(password, names);
        if (reason != null) {
            form.error("password", "This password is easy to guess. " + reason + " Four or five words that have nothing to do with each other make a good one.");
        } else if (!password.equals(form.value("passwordAgain"))) {
            form.error("passwordAgain", "The two passwords differ. Type the same one twice.");
        }
        return password;
    }
}
