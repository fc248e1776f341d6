package org.steadwork.account.openid;

import java.util.List;
import java.util.Set;

/**
 * How somebody showed the provider who they are, by the claim {@code amr}. Two factors are believed only where it says so: {@code mfa}, or a
 * password or PIN together with a one-time code or a key in hardware. Nothing else counts, and no claim counts as one factor.
 * Source: RFC 8176 section 2.
 */
public final class MethodsUsed {

    private static final String SEVERAL_FACTORS = "mfa";
    private static final Set<String> KNOWN = Set.of("pwd", "pin");
    private static final Set<String> HELD = Set.of("otp", "hwk");

    private MethodsUsed() {
    }

    public static boolean twoFactors(Claims claims) {
        List<String> methods = claims.values("amr");
        return methods.contains(SEVERAL_FACTORS) || methods.stream().anyMatch(KNOWN::contains) && methods.stream().anyMatch(HELD::contains);
    }
}
