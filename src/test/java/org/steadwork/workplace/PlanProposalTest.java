package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.steadwork.drawing.desk.PlanBody;
import org.steadwork.drawing.desk.PlanScreen;
import org.steadwork.drawing.desk.PlanState;
import org.steadwork.drawing.desk.PlanThing;

class PlanProposalTest {

    private static final PlanBody BODY = new PlanBody(440, 455, 640, false);

    private static PlanState now(PlanThing pointer, PlanScreen... screens) {
        return new PlanState(290, List.of(screens), new PlanThing(40, 430, 440), pointer, null, null, null);
    }

    private static PlanState mirrored(PlanState s) {
        List<PlanScreen> screens = new ArrayList<>();
        s.screens().forEach(f -> screens.add(0, new PlanScreen(f.width(), f.offset() == 0 ? 0 : -f.offset(), f.distance(), f.turn(), f.main(), f.touching())));
        PlanThing p = s.pointer();
        PlanThing k = s.keyboard();
        return new PlanState(s.edge(), screens, new PlanThing(k.aside() == 0 ? 0 : -k.aside(), k.ahead(), k.width()),
                new PlanThing(-p.aside(), p.ahead(), p.width()), null, null, null);
    }

    @Test
    void twoEqualScreensMeetOnTheMidlineAndStandSquare() {
        PlanState then = PlanProposal.of(now(null, new PlanScreen(530, -100, 600, 0, true, false), new PlanScreen(530, 430, 600, 0, true, false)), BODY, 140, 745);
        assertEquals(List.of(-265., 265.), then.screens().stream().map(PlanScreen::offset).toList());
        // by hand: the middle of a screen turned in by 21 degrees lies at 247 and 650: atan(247 / 650) = 20.8 degrees
        assertEquals(List.of(21., 21.), then.screens().stream().map(PlanScreen::turn).toList());
    }

    @Test
    void theKeysComeToTheMidlineAndThePointerBesideThem() {
        PlanState then = PlanProposal.of(now(new PlanThing(-600, 700, 64)), BODY, 300, 600);
        assertEquals(0, then.keyboard().aside());
        assertEquals(-270, then.pointer().aside(), "on the hand it is used with");
        assertEquals(then.keyboard().ahead(), then.pointer().ahead());
        assertEquals(120, then.keyboard().ahead() - then.edge(), 1e-9, "300 mm from the edge are too far");
        assertEquals(140, PlanProposal.of(now(null), BODY, 140, 600).keyboard().ahead() - PlanProposal.of(now(null), BODY, 140, 600).edge(), 1e-9);
    }

    @Test
    void aMirroredDeskGetsTheMirroredProposal() {
        Random random = new Random(20301220);
        for (int round = 0; round < 500; round++) {
            boolean equal = random.nextBoolean();
            double first = random.nextInt(900) - 450.5;
            PlanState now = now(new PlanThing(random.nextInt(1200) - 600.5, 430, 64), new PlanScreen(400 + random.nextInt(300), first, 600, 0, true, false),
                    new PlanScreen(400 + random.nextInt(300), first + 100 + random.nextInt(500), 600, 0, equal, false));
            PlanState then = PlanProposal.of(now, BODY, 140, 650);
            assertEquals(mirrored(then), PlanProposal.of(mirrored(now), BODY, 140, 650), now.toString());
            assertTrue(Math.abs(then.pointer().aside()) - BODY.shoulderBreadth() / 2 <= 150);
        }
    }
}
