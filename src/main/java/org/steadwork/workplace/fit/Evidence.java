package org.steadwork.workplace.fit;

/** How strong the evidence is that a deviation hurts someone; the constants are the grades of the criteria. */
public enum Evidence {
    /** Expert opinion or comfort. */
    E0,
    /** Laboratory only: muscle activity, joint angle, discomfort over hours. */
    E1,
    /** Limited: one or few longitudinal studies, or inconsistent ones. */
    E2,
    /** Moderate: several longitudinal studies agree. */
    E3
}
