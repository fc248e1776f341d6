package org.steadwork.ownpage;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Cookie;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.UriInfo;
import java.util.Optional;

/** Tells from the cookie of the patient's own page which case it may show. It opens nothing else of the clinic. */
@RequestScoped
class OwnGuest {

    private static final String COOKIE = "steadwork-own";

    @Inject
    OwnLinks links;

    @Context
    HttpHeaders headers;

    @Context
    UriInfo uri;

    Optional<OwnLink> link() {
        return token().flatMap(links::ofVisit);
    }

    Optional<String> token() {
        Cookie cookie = headers.getCookies().get(COOKIE);
        return cookie == null || cookie.getValue().isBlank() ? Optional.empty() : Optional.of(cookie.getValue());
    }

    NewCookie cookie(String token) {
        return cookie(token, (int) OwnVisit.LONGEST.toSeconds());
    }

    NewCookie noCookie() {
        return cookie("", 0);
    }

    /** Lax, since the link is opened from outside: by a camera or a message. */
    private NewCookie cookie(String value, int maxAge) {
        return new NewCookie.Builder(COOKIE).value(value).path("/own").httpOnly(true).secure(uri.getRequestUri().getScheme().equals("https"))
                .sameSite(NewCookie.SameSite.LAX).maxAge(maxAge).build();
    }
}
