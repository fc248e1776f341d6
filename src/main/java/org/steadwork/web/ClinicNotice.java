package org.steadwork.web;

import java.util.List;

/** Tells the lead, on the page Clinic, of something about the running of the program itself; each feature that can tell is one bean of this type. */
public interface ClinicNotice {

    /**
     * One notice.
     *
     * @param href where it is dealt with
     */
    record Line(String title, String text, String href, String action) {
    }

    List<Line> lines();
}
