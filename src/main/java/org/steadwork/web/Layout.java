package org.steadwork.web;

import io.quarkus.security.identity.SecurityIdentity;
import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** What every page's frame shows: who is signed in, the day, and whether this is the demo clinic. */
@Named("layout")
@RequestScoped
public class Layout {

    private static final DateTimeFormatter NOW = DateTimeFormatter.ofPattern("EEE\u00a0d\u00a0MMM\u00a0uuuu, HH:mm", Locale.ENGLISH);

    @Inject
    SecurityIdentity identity;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    @ConfigProperty(name = "steadwork.clinic.phone")
    Optional<String> clinicPhone;

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> clinicName;

    @ConfigProperty(name = "steadwork.clinic.paper", defaultValue = "a4")
    String paper;

    @Inject
    RoutingContext routing;

    @ConfigProperty(name = "quarkus.rest-csrf.cookie-name")
    String tokenCookie;

    /** The token that forms send; on an error page, where none was made, the one the browser has, or nothing. */
    public String token() {
        String made = routing.get("csrf_token");
        Cookie kept = routing.request().getCookie(tokenCookie);
        return made != null ? made : kept == null ? "" : kept.getValue();
    }

    public boolean signedIn() {
        return !identity.isAnonymous();
    }

    public String who() {
        return identity.<String>getAttribute("display-name");
    }

    public boolean clinician() {
        return identity.hasRole("clinician");
    }

    public boolean lead() {
        return identity.hasRole("lead");
    }

    public boolean demo() {
        return demo;
    }

    /** The telephone number of the clinic, blank where it is not set: sheets then print a line to write on. */
    public String clinicPhone() {
        return clinicPhone.orElse("");
    }

    /** The name of the clinic, blank where it is not set. */
    public String clinicName() {
        return clinicName.orElse("");
    }

    /** The sheet that handouts are printed on: {@code a4} or {@code letter}. */
    public String paper() {
        return paper.strip().equalsIgnoreCase("letter") ? "letter" : "a4";
    }

    public String paperName() {
        return paper().equals("letter") ? "letter size" : "A4";
    }

    public String now() {
        return NOW.format(LocalDateTime.now(clock));
    }
}
