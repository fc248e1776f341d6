package org.steadwork.people;

import org.steadwork.web.Form;

/** What several forms of the address book ask alike. */
final class ContactFields {

    private ContactFields() {
    }

    /** Reads an e-mail address; one without exactly one @ is asked again. */
    static String email(Form form) {
        String email = form.text("email", 120);
        if (email != null && !email.matches("[^@\\s]+@[^@\\s]+")) {
            form.error("email", "An e-mail address has one @ and no spaces. You entered “" + email + "”.");
        }
        return email;
    }
}
