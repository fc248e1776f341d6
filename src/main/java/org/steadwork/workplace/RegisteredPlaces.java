package org.steadwork.workplace;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.stream.Stream;
import org.steadwork.casefile.CaseFile;
import org.steadwork.web.Form;

/** Finds the registered desks and chairs for the form of an assessment. */
@ApplicationScoped
class RegisteredPlaces {

    @Inject
    Register register;

    @Inject
    RegisterContent content;

    /** Takes two queries; none when the patient has no employer and nothing was chosen. */
    RegisteredPlace of(CaseFile file, Form form) {
        List<Long> chosen = Stream.of("desk", "chair").map(form::value).filter(value -> value.matches("\\d{1,18}")).map(Long::valueOf).toList();
        List<Furniture> offered = register.offered(file.patient().employer(), chosen);
        List<Long> wanted = offered.stream().map(Furniture::id).filter(chosen::contains).toList();
        return RegisteredPlace.of(form, offered, register.sizes(wanted), content);
    }
}
