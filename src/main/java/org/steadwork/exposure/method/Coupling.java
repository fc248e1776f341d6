package org.steadwork.exposure.method;

/** How well the hands hold the load. */
public enum Coupling {
    GOOD, FAIR, POOR
}
