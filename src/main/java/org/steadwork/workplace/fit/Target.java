package org.steadwork.workplace.fit;

/**
 * Where a deviation should be: its aim, its bands and its weight, all mm except the weight, which has no unit.
 *
 * @param aim lies within {@code green}
 * @param green in range; lies within {@code amber}
 * @param amber near the edge; outside is out of range
 * @param weight cost of 10 mm outside green, 0 or more
 */
public record Target(double aim, Band green, Band amber, double weight) {

    public Target {
        if (!green.contains(aim) || !amber.encloses(green)) {
            throw new IllegalArgumentException("The aim " + aim + " must lie in the green band, and that in the amber one");
        }
        if (!(weight >= 0 && weight < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A weight must be 0 or more, but was " + weight);
        }
    }

    /** Returns weight × mm outside green ÷ 10; 0 for a deviation that is not known. */
    public double cost(double deviation) {
        return Double.isNaN(deviation) ? 0 : weight * green.outside(deviation) / 10;
    }

    /** Tells whether the first deviation costs less than the second, or as much and is no further from the aim. */
    boolean prefers(double first, double second) {
        int byCost = Double.compare(cost(first), cost(second));
        return (byCost != 0 ? byCost : Double.compare(Math.abs(first - aim), Math.abs(second - aim))) <= 0;
    }

    Target loosened() {
        return new Target(aim, amber, amber, weight);
    }

    public Verdict verdict(double deviation) {
        return Verdict.of(deviation, green, amber);
    }
}
