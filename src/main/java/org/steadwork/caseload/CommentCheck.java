package org.steadwork.caseload;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.steadwork.people.Employer;
import org.steadwork.web.Form;

/** Looks for names of an employer's patients in what is written to that employer. */
@ApplicationScoped
class CommentCheck {

    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}'’-]+");

    @Inject
    GroupReports reports;

    /** Notes an error at the field when a word in it is a given or family name of one of the employer's patients, written as a name. */
    void check(Form form, String field, Employer employer) {
        String text = form.value(field);
        if (text.isBlank()) {
            return;
        }
        Set<String> names = new HashSet<>();
        reports.names(employer.id()).forEach(name -> {
            for (Object part : name) {
                names.addAll(WORD.matcher((String) part).results().map(found -> found.group()).toList());
            }
        });
        WORD.matcher(text).results().map(found -> found.group()).filter(names::contains).findFirst().ifPresent(name -> form.error(field,
                "“" + name + "” is a name of somebody who works there and is seen here. The report names nobody: say it without."));
    }
}
