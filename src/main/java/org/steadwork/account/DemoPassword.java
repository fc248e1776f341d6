package org.steadwork.account;

/** The one password of all invented accounts of the demo clinic; it stands on the demo's sign-in page and nowhere else. */
public final class DemoPassword {

    public static final String VALUE = "desk-and-daylight";

    private DemoPassword() {
    }
}
