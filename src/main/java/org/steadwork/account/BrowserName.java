package org.steadwork.account;

import java.util.LinkedHashMap;
import java.util.Map;

/** Tells from what a browser says of itself, in a few words, which it is: enough to know one's own device again. */
final class BrowserName {

    private static final Map<String, String> BROWSERS = new LinkedHashMap<>();
    private static final Map<String, String> SYSTEMS = new LinkedHashMap<>();

    static {
        // those first that also carry the name of another
        BROWSERS.put("Edg", "Edge");
        BROWSERS.put("OPR/", "Opera");
        BROWSERS.put("SamsungBrowser", "Samsung Internet");
        BROWSERS.put("Firefox/", "Firefox");
        BROWSERS.put("FxiOS", "Firefox");
        BROWSERS.put("CriOS", "Chrome");
        BROWSERS.put("Chrome/", "Chrome");
        BROWSERS.put("Safari/", "Safari");
        SYSTEMS.put("iPhone", "iPhone");
        SYSTEMS.put("iPad", "iPad");
        SYSTEMS.put("Android", "Android");
        SYSTEMS.put("Windows", "Windows");
        SYSTEMS.put("Mac OS X", "Mac");
        SYSTEMS.put("CrOS", "ChromeOS");
        SYSTEMS.put("Linux", "Linux");
    }

    private BrowserName() {
    }

    static String of(String userAgent) {
        if (userAgent == null || userAgent.isBlank()) {
            return "not named";
        }
        String browser = first(BROWSERS, userAgent);
        String system = first(SYSTEMS, userAgent);
        return (browser == null ? "another program" : browser) + (system == null ? "" : " on " + system);
    }

    private static String first(Map<String, String> names, String userAgent) {
        return names.entrySet().stream().filter(name -> userAgent.contains(name.getKey())).map(Map.Entry::getValue).findFirst().orElse(null);
    }
}
