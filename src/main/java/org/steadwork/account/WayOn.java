package org.steadwork.account;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where a sign-in leads to: only a path of our own may follow it. */
final class WayOn {

    private WayOn() {
    }

    static String safe(String to) {
        return to != null && to.matches("/[A-Za-z0-9][A-Za-z0-9/._-]*") && !to.startsWith("/sign-") ? to : "/";
    }

    static String with(String page, String to) {
        return to.equals("/") ? page : page + "?to=" + URLEncoder.encode(to, StandardCharsets.UTF_8);
    }
}
