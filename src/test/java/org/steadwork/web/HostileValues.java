package org.steadwork.web;

import java.util.List;
import java.util.Random;

/** What nobody should send, by kind; the random choice is seeded by the caller. */
final class HostileValues {

    static final String MARK = "hostile(1)";
    private static final List<String> FIXED = List.of("", " ", "null", "undefined", "NULL", "true", "-1", "0", "-0", "0.0000001", "12,5", "1e308", "1e999", "-1e999", "NaN",
            "Infinity", "-Infinity", "2147483648", "-2147483649", "9223372036854775808", "99999999999999999999999999", "0x1F", "٣", "١٢", "1_000", "+5", "½", "12 kg",
            "31.2.2026", "2026-13-45", "0000-00-00", "9999-12-31", "10000-01-01", "-0001-01-01", "1 Jan 1066", "4 Mar 2199", "29 Feb 2027", "24:61", "25:00", "9-1",
            "<script>" + MARK + "</script>", "\"><img src=x onerror=" + MARK + ">", "'><svg/onload=" + MARK + ">", "javascript:" + MARK, "</textarea><script>" + MARK + "</script>",
            "<!--", "]]>", "<![CDATA[<script>" + MARK + "</script>]]>", "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><x>&e;</x>", "&lt;b&gt;", "&#x3c;script&#x3e;",
            "'; drop table patient; --", "' or '1'='1", "\\'; select pg_sleep(5); --", "%' escape '", "1; shutdown", "{inject:layout.token}", "{form.value('x')}", "{#if true}x{/if}",
            "{#include layout/page}{/include}", "{cdi:config}", "${7*7}", "#{7*7}", "{{7*7}}", "<%= 7*7 %>", "${jndi:ldap://127.0.0.1:1/a}", "=1+1", "+1+1", "@SUM(1)",
            "=cmd|' /C calc'!A0", "-2+3+cmd|' /C calc'!A0", "../../../../etc/passwd", "..\\..\\windows\\win.ini", "/etc/passwd", "C:\\nul", "con", "file:///etc/passwd",
            "http://127.0.0.1:1/", "\u0000", "a\u0000b", "a\u0007b\u001b[31m", "\r\nSet-Cookie: x=y", "a\tb\r\nc", "\u2028\u2029", "\u202Eright to left", "\u200F\u200E\u2066\u2069",
            "שלום", "مرحبا", "日本語", "🧑‍⚕️🏳️‍🌈", "e\u0301\u0327\u0489".repeat(20), "\uFFFE\uFFFF", "\uFEFFbom", "İıſK", "ß".repeat(50), "x".repeat(200), "word ".repeat(900),
            "%", "%00", "%c0%ae", "%s%n%x", "\\", "\"", "'", "`", "|", "a,b;c\td", "[]", "{}", "[object Object]", "yes", "no", "on", "no_such_word");

    private HostileValues() {
    }

    static String any(Random random) {
        int kind = random.nextInt(100);
        if (kind < 80) {
            return FIXED.get(random.nextInt(FIXED.size()));
        }
        if (kind < 90) {
            return random.ints(1 + random.nextInt(40), 0x20, 0x3000).filter(c -> Character.isDefined(c)).collect(StringBuilder::new, StringBuilder::appendCodePoint,
                    StringBuilder::append).toString();
        }
        if (kind < 96) {
            return String.valueOf(random.nextInt(3) == 0 ? random.nextLong() : random.nextGaussian() * 1000);
        }
        return "long ".repeat(random.nextInt(4000));
    }

    static String huge() {
        return "m".repeat(1_000_000);
    }
}
