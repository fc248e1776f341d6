package org.steadwork.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Set;
import org.junit.jupiter.api.Test;

class MarkTest {

    @Test
    void notAskedIsNeverNoPain() {
        assertEquals("pain not asked, kind not said", new Mark("neck", null, Set.of()).words());
        assertEquals("no pain", new Mark("neck", 0, Set.of()).words());
    }

    @Test
    void numbnessWithoutPainIsStillSaid() {
        assertEquals("pain 0 of 10, tingling or numb", new Mark("neck", 0, Set.of(SymptomKind.TINGLING_OR_NUMB)).words());
    }

    @Test
    void kindsAreSaidInOneOrder() {
        assertEquals("pain 4 of 10, ache, stiffness",
                new Mark("neck", 4, Set.of(SymptomKind.STIFFNESS, SymptomKind.ACHE)).words());
        assertEquals("pain 10 of 10, kind not said", new Mark("neck", 10, Set.of()).words());
    }

    @Test
    void painOutsideTheScaleIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Mark("neck", -1, Set.of()));
        assertThrows(IllegalArgumentException.class, () -> new Mark("neck", 11, Set.of()));
    }
}
