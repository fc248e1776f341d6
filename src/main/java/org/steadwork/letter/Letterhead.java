package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The clinic as letters name it, from the settings {@code steadwork.clinic.*}. */
@ApplicationScoped
class Letterhead {

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> name;

    /** Address lines, parted by semicolons. */
    @ConfigProperty(name = "steadwork.clinic.address")
    Optional<String> address;

    @ConfigProperty(name = "steadwork.clinic.phone")
    Optional<String> phone;

    @ConfigProperty(name = "steadwork.demo", defaultValue = "false")
    boolean demo;

    boolean complete() {
        return name.isPresent() && phone.isPresent();
    }

    Optional<String> phone() {
        return phone;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(name.orElse("Occupational physiotherapy"));
        address.ifPresent(text -> lines.add(String.join(", ", text.split("\\s*;\\s*"))));
        phone.ifPresent(number -> lines.add("Telephone " + number));
        return lines;
    }

    /** Returns the small print under every page. */
    String foot() {
        return "For the reader named above only. Please ask before it is shown to anyone else."
                + (demo ? " Demo letter: every person, place and number in it is invented." : "");
    }
}
