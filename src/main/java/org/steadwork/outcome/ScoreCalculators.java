package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorFamily;

/** A calculator of the Bench for each instrument that the content names. */
@ApplicationScoped
class ScoreCalculators implements CalculatorFamily {

    @Inject
    Instruments instruments;

    @Override
    public List<Calculator> calculators() {
        return instruments.all().stream().<Calculator>map(ScoreCalculator::new).toList();
    }
}
