package org.steadwork.redflag.rules;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Writes suspension tokens for the regions they hold for: {@code region_all} of a knee question is {@code region_all:knee}. */
final class Tokens {

    private final Catalogue catalogue;
    private final Set<String> reported;

    Tokens(Catalogue catalogue, Set<String> reported) {
        this.catalogue = catalogue;
        this.reported = reported;
    }

    Set<String> of(Set<String> tokens, String region) {
        return of(tokens, List.of(region));
    }

    /** A general question holds for every region reported. */
    Set<String> of(Set<String> tokens, Collection<String> regions) {
        Set<String> named = new LinkedHashSet<>(regions);
        named.remove(Catalogue.GENERAL);
        Set<String> holdFor = named.isEmpty() ? reported : named;
        Set<String> result = new LinkedHashSet<>();
        for (String token : tokens) {
            if (catalogue.regionTokens().contains(token)) {
                holdFor.forEach(region -> result.add(token + ":" + region));
            } else {
                result.add(token);
            }
        }
        return result;
    }
}
