package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Source: worked case 8 (two people at one desk), by hand; the rest worked by hand beside the check. */
class SharedDeskTest {

    private static final double EXACT = 1e-9;
    private static final Person SHORT = WorkedCase.named("8a-U1").person();
    private static final Person TALL = WorkedCase.named("8a-U2").person();

    private static Workstation desk(Travel heights) {
        return Workstation.of(Map.of(Part.SEAT, Travel.of(400, 520), Part.DESK, heights), Settings.UNKNOWN, 30, 30);
    }

    @Test
    void eachSetsTheDeskForThemselves() {
        List<SharedDesk.Place> own = SharedDesk.of(List.of(SHORT, TALL), desk(Travel.of(680, 820)), TARGETS, Travel.of(680, 820)).own();
        assertEquals(680, own.get(0).settings().desk(), EXACT);
        assertEquals(480, own.get(0).settings().seat(), EXACT);
        assertEquals(90, own.get(0).settings().footrest(), EXACT);
        assertEquals(490, own.get(0).settings().screenTop() - own.get(0).settings().desk(), EXACT);
        assertEquals(730, own.get(1).settings().desk(), EXACT);
        assertEquals(495, own.get(1).settings().seat(), EXACT);
        assertEquals(0, own.get(1).settings().footrest(), EXACT);
        assertEquals(575, own.get(1).settings().screenTop() - own.get(1).settings().desk(), EXACT);
    }

    @Test
    void oneFixedDeskOf720ServesBothWithAFootrestForTheShorter() {
        SharedDesk shared = SharedDesk.of(List.of(SHORT, TALL), desk(Travel.fixed(720)), TARGETS, Travel.fixed(720));
        assertEquals(0, shared.fixed().leftOut());
        assertEquals(130, shared.fixed().places().get(0).settings().footrest(), EXACT);
        assertEquals(520, shared.fixed().places().get(0).settings().seat(), EXACT);
        assertEquals(495, shared.fixed().places().get(1).settings().seat(), EXACT);
        assertTrue(shared.fixed().places().stream().allMatch(place -> place.misses().isEmpty()));
        assertEquals(130, shared.footrest().orElseThrow().height(), EXACT);
    }

    /** At 725 the shorter sits at 520 with e = +5, the taller at 495 with e = −5: 25 + 25, against 100 at 720 and at 730. */
    @Test
    void theBestSharedHeightIsWhereBothAreNearest() {
        SharedDesk shared = SharedDesk.of(List.of(SHORT, TALL), desk(Travel.of(680, 820)), TARGETS, Travel.of(680, 820));
        assertEquals(725, shared.fixed().height(), EXACT);
        assertEquals(0, shared.fixed().leftOut());
    }

    /** Drops differ by (1305 − 725) − (1210 − 725) and more, so that one screen cannot be at 20 mm for both: 95 apart is halved. */
    @Test
    void oneScreenHeightLeavesNobodyOutWhereBandsOverlap() {
        SharedDesk.Sharing screen = SharedDesk.of(List.of(SHORT, TALL), desk(Travel.fixed(720)), TARGETS, Travel.fixed(720)).screen().orElseThrow();
        assertEquals(0, screen.leftOut());
        // eyes stand at 520 + 710 = 1230 and 495 + 830 = 1325, or 510 and 605 above the desk: within 0 to 60 both only near the edge
        assertEquals(2, screen.places().size());
        assertTrue(screen.height() >= 605 - 120 && screen.height() <= 510 + 20, screen.toString());
    }

    /** Thigh 200 under an elbow of 230 has K = −30: whatever the desk, e is at least +50 with the thigh free. */
    @Test
    void whoIsLeftOutIsSaidAndByHowMuch() {
        Person wide = WorkedCase.named("11").person();
        SharedDesk shared = SharedDesk.of(List.of(SHORT, wide), desk(Travel.of(650, 850)), TARGETS, Travel.of(650, 850));
        assertEquals(1, shared.fixed().leftOut());
        assertFalse(shared.fixed().places().get(0).leftOut());
        SharedDesk.Miss miss = shared.fixed().places().get(1).misses().stream().filter(m -> m.deviation() == Deviation.ELBOW).findFirst().orElseThrow();
        assertTrue(miss.off() >= 50, miss.toString());
        assertEquals(miss.off() - 10, miss.beyond(), EXACT);
        assertEquals(Verdict.OUT_OF_RANGE, miss.verdict());
    }

    @Test
    void theOrderOfPeopleDoesNotMatterAndNothingLeavesItsRange() {
        Random random = new Random(8);
        for (int i = 0; i < 40; i++) {
            Person one = random(random);
            Person other = random(random);
            Workstation desk = desk(Travel.of(680, 820));
            SharedDesk first = SharedDesk.of(List.of(one, other), desk, TARGETS, Travel.of(680, 820));
            SharedDesk second = SharedDesk.of(List.of(other, one), desk, TARGETS, Travel.of(680, 820));
            assertEquals(first.fixed().height(), second.fixed().height(), EXACT);
            assertEquals(first.fixed().places().get(0), second.fixed().places().get(1));
            for (SharedDesk.Place place : first.own()) {
                assertTrue(desk.travel(Part.DESK).orElseThrow().offers(place.settings().desk()), place.toString());
                assertTrue(desk.travel(Part.SEAT).orElseThrow().offers(place.settings().seat()), place.toString());
            }
            long ownLeftOut = first.own().stream().filter(SharedDesk.Place::leftOut).count();
            assertTrue(ownLeftOut <= first.fixed().leftOut(), "sharing left out fewer than setting it for oneself: " + first);
        }
    }

    private static Person random(Random random) {
        return SHORT.with(BodyMeasure.POPLITEAL_HEIGHT, Measurement.measured(350 + random.nextInt(140), 0))
                .with(BodyMeasure.ELBOW_REST_HEIGHT, Measurement.measured(190 + random.nextInt(100), 0))
                .with(BodyMeasure.THIGH_CLEARANCE, Measurement.measured(120 + random.nextInt(70), 0));
    }

    @Test
    void nobodyIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SharedDesk.of(List.of(), desk(Travel.fixed(720)), TARGETS, Travel.fixed(720)));
    }
}
