package org.steadwork.workplace.fit;

/** How a value was obtained; told means that somebody said it and nobody measured it. A value that nobody looked at is absent; it is never nought and never "fits". */
public enum How {
    MEASURED, TOLD, ESTIMATED, OBSERVED, NOT_LOOKED_AT
}
