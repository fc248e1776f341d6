package org.steadwork.people;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Finds for many people who may be known already: the same birth date and a similar name. */
public final class LikelyDoubles {

    /** @param where the file number, or the row it came from */
    record Known(String searchName, String where) {
    }

    private final Map<LocalDate, List<Known>> known;
    private final BiPredicate<String, String> alike;

    LikelyDoubles(Map<LocalDate, List<Known>> known, BiPredicate<String, String> alike) {
        this.known = known;
        this.alike = alike;
    }

    /** Returns where somebody like this stands: a file number, or the place told to {@link #add}. */
    public Optional<String> find(String name, LocalDate birthDate) {
        String key = SearchKey.of(name);
        return known.getOrDefault(birthDate, List.of()).stream().filter(one -> alike.test(key, one.searchName())).map(Known::where).findFirst();
    }

    public void add(String name, LocalDate birthDate, String where) {
        keep(known, birthDate, new Known(SearchKey.of(name), where));
    }

    static void keep(Map<LocalDate, List<Known>> known, LocalDate birthDate, Known one) {
        known.computeIfAbsent(birthDate, day -> new ArrayList<>()).add(one);
    }
}
