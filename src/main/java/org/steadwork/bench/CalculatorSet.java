package org.steadwork.bench;

import java.util.List;

/** Calculators of a feature that are named by its content, one for each entry: a bean of this type adds them all without a class for each. */
public interface CalculatorSet {

    /** The calculators, the same at every call. */
    List<Calculator> calculators();
}
