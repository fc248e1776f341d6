package org.steadwork.people;

import org.steadwork.web.Form;

/** An employer as typed: its name, and whom letters to it go to. */
record EmployerForm(String name, String contactName, String address, String phone, String email) {

    /** Reads it; a name that another employer has, or that holds no letter, is an error at its field. */
    static EmployerForm read(Form form, Employers employers, Employer known) {
        String name = form.requiredText("name", "Name", 120);
        if (name != null && SearchKey.of(name).isEmpty()) {
            form.error("name", "A name has at least one letter or digit. You entered “" + name + "”.");
        } else if (name != null) {
            employers.named(name).filter(other -> known == null || !other.id().equals(known.id()))
                    .ifPresent(other -> form.error("name", "An employer of this name is there already"
                            + (other.retiredOn() == null ? "." : "; it is retired and can be brought back.")));
        }
        return new EmployerForm(name, form.text("contactName", 120), form.text("address", 400), form.text("phone", 40), ContactFields.email(form));
    }

    static Form show(Employer e) {
        return Form.empty().with("version", e.version()).with("name", e.name()).with("contactName", e.contactName()).with("address", e.address())
                .with("phone", e.phone()).with("email", e.email());
    }

    void fill(Employer employer) {
        employer.isCalled(name);
        employer.contactAt(contactName, address, phone, email);
    }
}
