package org.steadwork.exposure.method;

/** One step of a method's working: what was found, by which rule, and the number it gave. */
public record Step(String what, String rule, double value) {
}
