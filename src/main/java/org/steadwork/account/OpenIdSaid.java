package org.steadwork.account;

import java.util.Locale;
import java.util.stream.Stream;

/** What the sign-in page says when somebody came back from the provider without being signed in. It never tells whether there is an account. */
enum OpenIdSaid {

    DENIED("%s did not sign you in. Try again, or sign in with your password."),
    FAILED("The sign-in with %s took too long, or what came back could not be checked. Nothing was opened. Try again, or sign in with your password."),
    REFUSED("%s knows you, but you may not sign in here that way. Sign in with your password, or ask the lead of the clinic."),
    AWAY("%s cannot be reached at the moment. Sign in with your password, or try again later."),
    UNENCRYPTED("This connection is not encrypted, and you are on another machine: the sign-in could be read on the way. Open the clinic by its https address.");

    private static final String PREFIX = "openid-";

    private final String words;

    OpenIdSaid(String words) {
        this.words = words;
    }

    /** Returns the sign-in page that says this, on the way to {@code to}. */
    String at(String to) {
        String after = "after=" + PREFIX + name().toLowerCase(Locale.ROOT);
        return to.equals("/") ? "/sign-in?" + after : WayOn.with("/sign-in", to) + "&" + after;
    }

    /** Returns the words for what an address asks to say, null where it asks for nothing of this kind. */
    static String words(String after, String provider) {
        return provider == null ? null : Stream.of(values()).filter(one -> (PREFIX + one.name().toLowerCase(Locale.ROOT)).equals(after)).findFirst()
                .map(one -> one.words.formatted(provider)).orElse(null);
    }
}
