package org.steadwork.workplace.fit;

/** Whose equation an estimate is read from; {@link #BALANCED} weights women and men equally and serves when sex is not recorded. */
public enum BodyGroup {
    FEMALE, MALE, BALANCED
}
