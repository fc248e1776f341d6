package org.steadwork.journey;

import java.util.LinkedHashSet;
import java.util.Set;

/** Finds what is not signed yet in the demo, whichever case it stands in. */
public final class Drafts {

    private static final int CASES = 20;
    private static final String LETTER = "/cases/\\d+/letters/\\d+";

    private Drafts() {
    }

    /** Opens a letter that can still be written to, the nearest to hand first, and returns its path. */
    public static String openLetter(Guest guest) {
        Set<String> letters = new LinkedHashSet<>();
        gather(guest.open("/").expect(200), letters);
        for (int number = 1; number <= CASES; number++) {
            for (String letter : letters) {
                if (guest.open(letter).status() == 200 && guest.offersButton("Save as draft") && guest.offersForm("[name=text-findings]")) {
                    return letter;
                }
            }
            letters.clear();
            if (guest.open("/cases/" + number + "/letters").status() == 200) {
                gather(guest, letters);
            }
        }
        throw guest.missing("no letter to write to");
    }

    private static void gather(Guest guest, Set<String> letters) {
        guest.page().select("a[href*=/letters/]").eachAttr("href").stream().filter(href -> href.matches(LETTER)).forEach(letters::add);
    }
}
