package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Random;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;

class CountChancesTest {

    /** Against commons-math's hypergeometric distribution, over random margins. */
    @Test
    void untiedChancesAreThoseOfTheLibrary() {
        Random random = new Random(20261130);
        for (int round = 0; round < 400; round++) {
            int people = 1 + random.nextInt(300);
            int finding = random.nextInt(people + 1);
            int complaint = random.nextInt(people + 1);
            int least = Math.max(0, finding + complaint - people);
            int most = Math.min(finding, complaint);
            CountChances ours = CountChances.of(least, most, finding, complaint, people - finding - complaint, 1, 1e-20);
            if (least == most) {
                assertEquals(1, ours.at(least), "the margins allow one count only; the library gives none");
                continue;
            }
            HypergeometricDistribution theirs = new HypergeometricDistribution(null, people, complaint, finding);
            for (int count = least; count <= most; count++) {
                assertEquals(theirs.probability(count), ours.at(count), 1e-12, people + " " + finding + " " + complaint + " " + count);
            }
            assertEquals(theirs.getNumericalMean(), ours.mean(), 1e-9 * people);
        }
    }

    @Test
    void aTableOfAHundredThousandPeopleIsReadAtOnce() {
        FourfoldTable table = new FourfoldTable(9_000, 6_000, 18_000, 67_000);
        assertTimeout(Duration.ofSeconds(1), () -> {
            Limits limits = table.oddsRatioLimits(0.95);
            // with so many people exact limits and those of the logarithm's normal approximation (Woolf 1955) meet
            double spread = 1.959964 * Math.sqrt(1 / 9_000.0 + 1 / 6_000.0 + 1 / 18_000.0 + 1 / 67_000.0);
            assertEquals(table.countedOddsRatio() * Math.exp(-spread), limits.low(), 0.005);
            assertEquals(table.countedOddsRatio() * Math.exp(spread), limits.high(), 0.005);
            assertEquals(table.countedOddsRatio(), table.oddsRatio(), 0.001);
            assertTrue(table.p() > 0 && table.p() < 1e-100);
        });
    }
}
