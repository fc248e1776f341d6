package org.steadwork.caseload;

import io.quarkus.runtime.QuarkusApplication;
import jakarta.inject.Inject;

/** The command {@code sum-up}: sums up every case anew for the caseload, as after a bulk load, and says how many. */
public class SumUpCaseload implements QuarkusApplication {

    @Inject
    OutcomeStart start;

    @Override
    public int run(String... words) {
        if (words.length != 0) {
            System.out.println("sum-up takes no further word");
            return 2;
        }
        System.out.println(start.rebuild() + " cases summed up");
        return 0;
    }
}
