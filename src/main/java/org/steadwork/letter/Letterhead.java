package org.steadwork.letter;

import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.letter.pdf.Paper;

/** The clinic as letters name it, from the settings {@code steadwork.clinic.*}. */
@ApplicationScoped
@Startup
public class Letterhead {

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> name;

    /** Address lines, parted by semicolons. */
    @ConfigProperty(name = "steadwork.clinic.address")
    Optional<String> address;

    @ConfigProperty(name = "steadwork.clinic.phone")
    Optional<String> phone;

    /** The sheet letters are printed on. */
    @ConfigProperty(name = "steadwork.clinic.paper", defaultValue = "a4")
    String paper;

    @ConfigProperty(name = "steadwork.demo", defaultValue = "false")
    boolean demo;

    @Inject
    ClinicWording wording;

    private Optional<String> foot = Optional.empty();

    /** Lets the clinic's own letterhead file go before the settings. */
    @PostConstruct
    void read() {
        wording.letterhead().ifPresent(file -> {
            name = file.optionalText("name").or(() -> name);
            phone = file.optionalText("phone").or(() -> phone);
            address = file.texts("address").isEmpty() ? address : Optional.of(String.join("; ", file.texts("address")));
            foot = file.optionalText("foot");
            paper = file.optionalText("paper").orElse(paper);
        });
        paper();
    }

    /** Returns the sheet that everything is printed on. */
    public Paper paper() {
        try {
            return Paper.valueOf(paper.strip().toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException("steadwork.clinic.paper must be a4 or letter, but is '" + paper + "'");
        }
    }

    boolean complete() {
        return name.isPresent() && phone.isPresent();
    }

    Optional<String> phone() {
        return phone;
    }

    /** Returns the name, then the address, then the telephone of the clinic. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(name.orElse("Occupational physiotherapy"));
        address.ifPresent(text -> lines.add(String.join(", ", text.split("\\s*;\\s*"))));
        phone.ifPresent(number -> lines.add("Telephone " + number));
        return lines;
    }

    /** Returns the small print under every page. */
    public String foot() {
        return foot.orElse("For the reader named above only. Please ask before it is shown to anyone else.")
                + (demo ? " Demo letter: every person, place and number in it is invented." : "");
    }
}
