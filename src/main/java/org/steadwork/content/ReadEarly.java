package org.steadwork.content;

/**
 * A bean that reads content when it is made and needs nothing that is set at run time. It is made beside the rest of the start, on
 * another processor. It must be made at the start as well: an error is told there.
 */
public interface ReadEarly {

    /** Makes the bean that stands behind a proxy. */
    default void made() {
    }
}
