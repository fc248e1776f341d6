package org.steadwork.workplace.fit;

/** How a value was obtained. A value that nobody looked at is absent; it is never nought and never "fits". */
public enum How {
    MEASURED, ESTIMATED, OBSERVED, NOT_LOOKED_AT
}
