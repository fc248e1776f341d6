package org.steadwork.workplace;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.steadwork.web.Form;
import org.steadwork.workplace.fit.How;

/**
 * The sizes that somebody told and nobody measured, by field of the form, in mm. Saved with the same amount they stay told, until
 * it is said that they were measured.
 */
final class ToldSizes {

    /** The field that says whether there are any. */
    static final String SOME = "told";
    /** The tick that says that they were measured now. */
    private static final String MEASURED = "toldMeasured";

    private final Map<String, BigDecimal> amounts = new HashMap<>();

    /** @param look the assessment that is changed or taken over, or null */
    static ToldSizes of(RegisteredPlace place, RecordedWorkplace look) {
        ToldSizes told = new ToldSizes();
        told.amounts.putAll(place.told());
        if (look != null) {
            look.taken().forEach((key, taken) -> {
                if (taken.how() == How.TOLD) {
                    told.amounts.putIfAbsent(key, taken.amount());
                }
            });
        }
        return told;
    }

    /** Marks as told what was typed as it was told. */
    void keep(Form form, Map<String, Taken> taken) {
        if (!form.ticked(MEASURED)) {
            taken.replaceAll((key, value) -> amounts.containsKey(key) && amounts.get(key).compareTo(value.amount()) == 0 ? value.told() : value);
        }
    }
}
