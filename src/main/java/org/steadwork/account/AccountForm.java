package org.steadwork.account;

import java.nio.charset.StandardCharsets;
import org.steadwork.web.Form;

/** A new account as typed. */
record AccountForm(String userName, String fullName, String displayName, String profession, String registration, String password) {

    static AccountForm read(Form form) {
        String userName = form.requiredText("userName", "User name", 60);
        if (userName != null && !userName.matches("[\\p{L}\\p{N}._@-]{3,60}")) {
            form.error("userName", "3 to 60 letters, digits, dots, hyphens or an e-mail address, without spaces. You entered “" + userName + "”.");
        }
        String fullName = form.requiredText("fullName", "Name", 120);
        String displayName = form.requiredText("displayName", "Short name", 60);
        String profession = form.text("profession", 80);
        String registration = form.text("registration", 60);
        String password = form.value("password");
        int bytes = password.getBytes(StandardCharsets.UTF_8).length;
        if (password.length() < Account.SHORTEST_PASSWORD || bytes > Account.LONGEST_PASSWORD_BYTES) {
            form.error("password", "The password must have " + Account.SHORTEST_PASSWORD + " to " + Account.LONGEST_PASSWORD_BYTES
                    + " characters (accented ones count more). Yours has " + password.length() + ".");
        } else if (!password.equals(form.value("passwordAgain"))) {
            form.error("passwordAgain", "The two passwords differ. Type the same one twice.");
        }
        return new AccountForm(userName, fullName, displayName, profession, registration, password);
    }
}
