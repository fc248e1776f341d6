package org.steadwork.bench;

import java.util.List;

/** Calculators that follow from content, one for each entry. A feature makes it an {@code @ApplicationScoped} bean. */
public interface CalculatorFamily {

    List<Calculator> calculators();
}
