package org.steadwork.account;

import org.steadwork.web.Form;

/** An account as typed, without its password. */
record AccountForm(String userName, String fullName, String displayName, String profession, String registration) {

    static AccountForm read(Form form) {
        String userName = form.requiredText("userName", "User name", 60);
        if (userName != null && !userName(userName)) {
            form.error("userName", "3 to 60 letters, digits, dots, hyphens or an e-mail address, without spaces. You entered “" + userName + "”.");
        }
        return readPerson(form, userName);
    }

    /** True for what may be a user name. */
    static boolean userName(String typed) {
        return typed.matches("[\\p{L}\\p{N}._@-]{3,60}");
    }

    /** Reads what may be changed later: all but the user name. */
    static AccountForm readPerson(Form form, String userName) {
        String fullName = form.requiredText("fullName", "Name", 120);
        String displayName = form.requiredText("displayName", "Short name", 60);
        String profession = form.text("profession", 80);
        String registration = form.text("registration", 60);
        return new AccountForm(userName, fullName, displayName, profession, registration);
    }
}
