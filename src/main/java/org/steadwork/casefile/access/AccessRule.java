package org.steadwork.casefile.access;

/** Who opens a case: every clinician of the clinic, or those who treat it. */
public enum AccessRule {
    CLINIC, CARE_TEAM
}
